#include "core/record/text_file.h"

#include <array>
#include <cerrno>
#include <fstream>
#include <system_error>

#include "core/record/json_value.h"

#if defined(__unix__) || defined(__APPLE__)
#define WARDCHALK_POSIX
#include <fcntl.h>
#include <unistd.h>
#endif

namespace wardchalk {

namespace {

namespace fs = std::filesystem;

Refusal unreadable(const fs::path& path, std::string why) {
  return {RefusalCode::fileUnreadable, path.string() + " " + std::move(why), {}, {}};
}

/// Why a file could not be written, by the system's number.
RefusalCode whyUnwritable(int error) {
  switch (error) {
    case ENOSPC:
#ifdef EDQUOT
    case EDQUOT:
#endif
    case EFBIG:
      return RefusalCode::diskFull;
    case EACCES:
    case EPERM:
    case EROFS:
      return RefusalCode::folderReadOnly;
    case ENOENT:
    case ENOTDIR:
      return RefusalCode::folderMissing;
    default:
      return RefusalCode::fileUnwritable;
  }
}

#ifdef WARDCHALK_POSIX

/// An open file, closed at the end.
class Descriptor {
 public:
  Descriptor(const fs::path& path, int flags, unsigned mode = 0)
      : number_(::open(path.c_str(), flags, mode)) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  [[nodiscard]] bool isOpen() const { return number_ >= 0; }
  [[nodiscard]] bool write(std::string_view text) const {
    while (!text.empty()) {
      const ssize_t done = ::write(number_, text.data(), text.size());
      if (done < 0 && errno == EINTR) continue;
      if (done <= 0) return false;
      text.remove_prefix(static_cast<std::size_t>(done));
    }
    return true;
  }
  /// Waits until what was written is on the disk, and not only on its way there.
  [[nodiscard]] bool settle() const { return ::fsync(number_) == 0; }

 private:
  int number_;
};

/// The system's number of what went wrong; 0 when the text is on the disk. One that takes an old file's place
/// is `guarded` until it has the rights of that one.
int writeWhole(const fs::path& path, std::string_view text, bool guarded) {
  const Descriptor file(path, O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, guarded ? 0600U : 0666U);
  return file.isOpen() && file.write(text) && file.settle() ? 0 : errno;
}

/// The new name must outlive a power cut as well. Some file systems cannot promise it; the file is whole
/// anyhow.
void settleFolder(const fs::path& folder) {
  const Descriptor opened(folder, O_RDONLY | O_CLOEXEC);
  if (opened.isOpen()) (void)opened.settle();
}

#else

int writeWhole(const fs::path& path, std::string_view text, bool) {
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file.write(text.data(), static_cast<std::streamsize>(text.size()));
  file.close();
  return file ? 0 : (errno == 0 ? EIO : errno);
}

void settleFolder(const fs::path&) {}

#endif

/// A name that points elsewhere stays one: what it points at is written anew.
fs::path targetOf(const fs::path& path) {
  std::error_code error;
  const fs::path target = fs::weakly_canonical(path, error);
  return error ? path : target;
}

/// Who could not read the old file shall not be able to read the new one.
void keepPermissions(const fs::path& from, const fs::path& to) {
  std::error_code error;
  const fs::file_status status = fs::status(from, error);
  if (!error && fs::is_regular_file(status)) fs::permissions(to, status.permissions(), error);
}

}  // namespace

Result<std::string> readTextFile(const fs::path& path) {
  std::error_code error;
  if (fs::is_directory(path, error)) return unreadable(path, "is a folder");
  std::ifstream file(path, std::ios::binary);
  if (!file)
    return unreadable(path, fs::exists(path, error) ? "may not be opened" : "is not there");
  std::string text;
  std::array<char, 16384> part;
  // a case is far smaller than the largest file that is read
  while (text.size() <= largestFile && (file.read(part.data(), part.size()), file.gcount() > 0))
    text.append(part.data(), static_cast<std::size_t>(file.gcount()));
  if (file.bad()) return unreadable(path, "broke off while it was read");
  if (text.size() > largestFile) return Refusal{RefusalCode::fileTooLarge, {}, "4 MiB", {}};
  return text;
}

std::optional<Refusal> writeTextFile(const fs::path& path, std::string_view text) {
  const fs::path target = targetOf(path);
  const fs::path temporary = target.string() + ".part";
  std::error_code error;
  int failed = writeWhole(temporary, text, fs::exists(target, error));
  if (failed == 0) {
    keepPermissions(target, temporary);
    fs::rename(temporary, target, error);
    failed = error.value();
  }
  if (failed == 0) {
    settleFolder(target.parent_path());
    return std::nullopt;
  }
  std::error_code ignored;  // the save has failed already, and that is what is told
  fs::remove(temporary, ignored);
  return Refusal{whyUnwritable(failed), path.string(), {}, {}};
}

FileNow compareFile(const fs::path& path, std::string_view known) {
  std::error_code error;
  if (!fs::exists(path, error)) return FileNow::gone;
  const Result<std::string> now = readTextFile(path);
  return now && *now == known ? FileNow::asKnown : FileNow::changed;
}

}  // namespace wardchalk
