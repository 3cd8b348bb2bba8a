#include "core/record/replace_file.h"

#include <random>

#include "core/record/detail/write_fault.h"
#include "core/record/path_text.h"

namespace wardchalk {

std::string randomName() {
  constexpr std::string_view letters = "0123456789abcdefghijklmnopqrstuv";
  constexpr int length = 24;  // 120 bits: no two programs draw the same, and nobody guesses one
  std::random_device draw;
  std::string name = ".wardchalk-";
  for (int i = 0; i < length; ++i) name.push_back(letters[draw() % letters.size()]);
  return name + ".part";
}

}  // namespace wardchalk

#if defined(__unix__) || defined(__APPLE__)
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdio>
#include <thread>

#include "core/record/detail/file_place.h"

namespace wardchalk {

using detail::FilePlace;
using detail::placeOf;
using detail::unwritable;

namespace {

constexpr mode_t guarded = 0600;  // until it has the rights of the old one
constexpr mode_t usual = 0666;    // less what the user's mask takes away
constexpr mode_t rights = 0777;

bool writeAll(const Descriptor& file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t done = ::write(file.number(), bytes.data(), bytes.size());
    if (done < 0 && errno == EINTR) continue;
    if (done <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(done));
  }
  return true;
}

/// Whether exactly this text stands in the file.
bool holds(const Descriptor& file, std::string_view text) {
  struct stat status {};
  if (!file.isOpen() || ::fstat(file.number(), &status) != 0 || !S_ISREG(status.st_mode)) return false;
  if (static_cast<std::size_t>(status.st_size) != text.size()) return false;
  std::array<char, 65536> piece;
  while (true) {
    const ssize_t read = ::read(file.number(), piece.data(), piece.size());
    if (read < 0 && errno == EINTR) continue;
    if (read <= 0) return read == 0 && text.empty();
    const std::string_view got(piece.data(), static_cast<std::size_t>(read));
    if (!text.starts_with(got)) return false;
    text.remove_prefix(got.size());
  }
}

/// Keeps other savings of ours out of a folder while one looks and puts its file in place. Who holds it
/// longer than any of ours would is not waited for: then the look and the putting are merely close together.
class Turn {
 public:
  explicit Turn(const Descriptor& folder) : folder_(folder) {
    constexpr int most = 400;
    for (int tries = 0; tries < most; ++tries) {
      taken_ = ::flock(folder_.number(), LOCK_EX | LOCK_NB) == 0;
      if (taken_ || (errno != EWOULDBLOCK && errno != EINTR)) return;
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
  }
  ~Turn() {
    if (taken_) ::flock(folder_.number(), LOCK_UN);
  }
  Turn(const Turn&) = delete;
  Turn& operator=(const Turn&) = delete;

 private:
  const Descriptor& folder_;
  bool taken_ = false;
};

/// A new file on its way to its place. What it made it takes away again if it does not get there.
class NewFile {
 public:
  explicit NewFile(const FilePlace& place) : place_(place) {}
  ~NewFile() {
    if (!name_.empty()) ::unlinkat(place_.folder.number(), name_.c_str(), 0);
  }
  NewFile(const NewFile&) = delete;
  NewFile& operator=(const NewFile&) = delete;

  /// 0, or the system's number of what went wrong; likewise below.
  int make(Waiting waiting) {
    const bool replaces = look();
    const mode_t mode = replaces ? guarded : usual;
#ifdef O_TMPFILE
    const bool mayBeNamedLater = ::access("/proc/self/fd", X_OK) == 0;
    if (waiting == Waiting::namelessIfOffered && mayBeNamedLater)
      file_ = Descriptor(::openat(place_.folder.number(), ".", O_TMPFILE | O_RDWR | O_CLOEXEC, mode));
#else
    (void)waiting;
#endif
    if (file_.isOpen()) return 0;
    const std::string name = randomName();
    constexpr int flags = O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC;
    file_ = Descriptor(::openat(place_.folder.number(), name.c_str(), flags, mode));
    if (!file_.isOpen()) return errno;
    name_ = name;
    return 0;
  }

  int fill(std::string_view bytes) {
    if (!writeAll(file_, bytes)) return errno;
    if (replaces_) takeRights();
    return ::fsync(file_.number()) == 0 ? 0 : errno;
  }

  /// EEXIST when it may not take anything's place, and there is something.
  int putInPlace(bool onlyNew) {
    const int folder = place_.folder.number();
    if (name_.empty()) {
      const int failed = linkTo(place_.name);
      if (failed != EEXIST || onlyNew) return failed;
      const std::string name = randomName();
      if (const int unnamed = linkTo(name)) return unnamed;
      name_ = name;
    } else if (onlyNew) {
      return moveToNew();
    }
    if (::renameat(folder, name_.c_str(), folder, place_.name.c_str()) != 0) return errno;
    name_.clear();
    return 0;
  }

 private:
  bool look() {
    replaces_ = ::fstatat(place_.folder.number(), place_.name.c_str(), &old_, AT_SYMLINK_NOFOLLOW) == 0;
    return replaces_;
  }

  /// Who could not read the old file shall not be able to read the new one: where it cannot be given to the
  /// same group, that group's rights are given to nobody.
  void takeRights() {
    const int file = file_.number();
    mode_t mode = old_.st_mode & rights;
    if (::fchown(file, old_.st_uid, old_.st_gid) != 0 &&
        ::fchown(file, static_cast<uid_t>(-1), old_.st_gid) != 0)
      mode &= ~static_cast<mode_t>(S_IRWXG);
    ::fchmod(file, mode);
  }

  /// Gives a file that has no name yet its first one.
  int linkTo(const std::string& name) {
    const std::string self = "/proc/self/fd/" + std::to_string(file_.number());
    return ::linkat(AT_FDCWD, self.c_str(), place_.folder.number(), name.c_str(), AT_SYMLINK_FOLLOW) == 0
               ? 0
               : errno;
  }

  int moveToNew() {
    const int folder = place_.folder.number();
#ifdef RENAME_NOREPLACE
    if (::renameat2(folder, name_.c_str(), folder, place_.name.c_str(), RENAME_NOREPLACE) == 0) {
      name_.clear();
      return 0;
    }
    if (errno != EINVAL && errno != ENOSYS) return errno;
#endif
    // a file system that knows no such promise: what is left is to look once more
    if (look()) return EEXIST;
    if (::renameat(folder, name_.c_str(), folder, place_.name.c_str()) != 0) return errno;
    name_.clear();
    return 0;
  }

  const FilePlace& place_;
  Descriptor file_;
  std::string name_;  // of the file while it waits, if it has one
  struct stat old_ {};
  bool replaces_ = false;
};

/// Looked at again, now that the new file is ready: what stands there may be another file, or something else,
/// than when its place was found.
std::optional<Refusal> faultAt(const FilePlace& place, const std::filesystem::path& path,
                               const KnownFile& believed) {
  struct stat status {};
  const bool there = ::fstatat(place.folder.number(), place.name.c_str(), &status, AT_SYMLINK_NOFOLLOW) == 0;
  if (there && !S_ISREG(status.st_mode) && !S_ISLNK(status.st_mode))
    return Refusal{RefusalCode::targetNoFile, pathText(path), std::string(kindWords(status.st_mode)), {}};
  const Refusal changed{RefusalCode::targetChanged, pathText(path), {}, {}};
  if (believed.kind == KnownFile::Kind::nothing && there) return changed;
  if (believed.kind != KnownFile::Kind::text) return std::nullopt;
  constexpr int flags = O_RDONLY | O_NONBLOCK | O_NOFOLLOW | O_NOCTTY | O_CLOEXEC;
  const Descriptor now(::openat(place.folder.number(), place.name.c_str(), flags));
  return holds(now, believed.text) ? std::nullopt : std::optional(changed);
}

/// The new name must outlive a power cut as well. Some file systems cannot promise it; the file is whole
/// anyhow.
void settle(const Descriptor& folder) { (void)::fsync(folder.number()); }

/// 0 when done or when there is a fault; else the system's number of what went wrong.
int replaceAt(const FilePlace& place, const std::filesystem::path& path, std::string_view bytes,
              const KnownFile& believed, Waiting waiting, std::optional<Refusal>& fault) {
  NewFile file(place);
  int failed = file.make(waiting);
  if (failed == 0) failed = file.fill(bytes);
  if (failed != 0) return failed;
  const Turn turn(place.folder);
  fault = faultAt(place, path, believed);
  if (fault) return 0;
  const bool onlyNew = believed.kind == KnownFile::Kind::nothing;
  failed = file.putInPlace(onlyNew);
  if (failed != EEXIST || !onlyNew) return failed;
  fault = Refusal{RefusalCode::targetChanged, pathText(path), {}, {}};
  return 0;
}

}  // namespace

Result<Done> replaceFile(const std::filesystem::path& path, std::string_view bytes, const KnownFile& believed,
                         Waiting waiting) {
  const Result<FilePlace> place = placeOf(path);
  if (!place) return place.refusal();
  std::optional<Refusal> fault = faultAt(*place, path, believed);  // before any work is done for it
  if (fault) return *fault;
  int failed = replaceAt(*place, path, bytes, believed, waiting, fault);
  // a system may offer nameless files and then not let them be named
  if (failed != 0 && waiting == Waiting::namelessIfOffered)
    failed = replaceAt(*place, path, bytes, believed, Waiting::named, fault);
  if (fault) return *fault;
  if (failed != 0) return unwritable(path, failed);
  settle(place->folder);
  return Done{};
}

Result<Done> tryPlace(const std::filesystem::path& path) {
  const Result<FilePlace> place = placeOf(path);
  if (!place) return place.refusal();
  const int failed = NewFile(*place).make(Waiting::namelessIfOffered);
  if (failed != 0) return unwritable(path, failed);
  return Done{};
}

}  // namespace wardchalk

#else

#include <cerrno>
#include <cstdio>
#include <fstream>

namespace wardchalk {

using detail::unwritable;

/// Without the calls of POSIX: a new file under a random name, which then takes the place of the old one.
Result<Done> replaceFile(const std::filesystem::path& path, std::string_view bytes, const KnownFile& believed,
                         Waiting) {
  namespace fs = std::filesystem;
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (fs::exists(status) && !fs::is_regular_file(status))
    return Refusal{RefusalCode::targetNoFile, pathText(path), "a folder or a device", {}};
  const fs::path waiting = path.parent_path() / randomName();
  std::ofstream file(waiting, std::ios::binary | std::ios::trunc);
  if (!file) return unwritable(path, errno == 0 ? EIO : errno);
  file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  file.close();
  const bool changed = believed.kind != KnownFile::Kind::anything && fileAt(path) != believed;
  if (file && !changed) fs::rename(waiting, path, error);
  if (file && !changed && !error) return Done{};
  std::error_code ignored;  // the save has failed already, and that is what is told
  fs::remove(waiting, ignored);
  if (changed) return Refusal{RefusalCode::targetChanged, pathText(path), {}, {}};
  return unwritable(path, error ? error.value() : EIO);
}

Result<Done> tryPlace(const std::filesystem::path&) { return Done{}; }

}  // namespace wardchalk
#endif
