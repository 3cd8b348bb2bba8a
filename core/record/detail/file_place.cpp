#include "core/record/detail/file_place.h"

#if defined(__unix__) || defined(__APPLE__)
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <optional>

#include "core/record/detail/write_fault.h"

namespace wardchalk::detail {

namespace {

namespace fs = std::filesystem;

constexpr int mostLinks = 40;  // as many as Linux follows
constexpr std::size_t longestLink = 4096;

/// To be looked through and written to; one that may not be listed serves as well.
Descriptor openFolder(const Descriptor& from, const fs::path& folder) {
  const int at = from.isOpen() ? from.number() : AT_FDCWD;
  const fs::path named = folder.empty() ? fs::path(".") : folder;
  constexpr int flags = O_RDONLY | O_DIRECTORY | O_CLOEXEC;
  Descriptor opened(::openat(at, named.c_str(), flags));
#ifdef O_PATH
  if (!opened.isOpen() && errno == EACCES)
    opened = Descriptor(::openat(at, named.c_str(), O_PATH | O_DIRECTORY | O_CLOEXEC));
#endif
  return opened;
}

/// Whether nobody but this user and the superuser can have put this name into this folder, or can put another
/// in its place. A sticky folder (such as /tmp) keeps others from changing names that are not theirs, so
/// there it is the owner of the name that counts.
bool isOurs(const Descriptor& folder, const std::optional<struct stat>& entry) {
  struct stat status {};
  if (::fstat(folder.number(), &status) != 0) return false;
  const uid_t me = ::geteuid();
  const auto trusted = [me](uid_t owner) { return owner == me || owner == 0; };
  if (!trusted(status.st_uid)) return false;
  if ((status.st_mode & (S_IWGRP | S_IWOTH)) == 0) return true;
  return (status.st_mode & S_ISVTX) != 0 && entry && trusted(entry->st_uid);
}

Result<fs::path> linkIn(const Descriptor& folder, const std::string& name, const fs::path& path) {
  std::array<char, longestLink> text{};
  const ssize_t size = ::readlinkat(folder.number(), name.c_str(), text.data(), text.size());
  if (size < 0) return unwritable(path, errno);
  if (static_cast<std::size_t>(size) == text.size()) return unwritable(path, ENAMETOOLONG);
  return fs::path(std::string(text.data(), static_cast<std::size_t>(size)));
}

}  // namespace

Result<FilePlace> placeOf(const fs::path& path) {
  Descriptor folder;
  fs::path next = path;
  for (int links = 0; links <= mostLinks; ++links) {
    Descriptor opened = openFolder(folder, next.parent_path());
    if (!opened.isOpen()) return unwritable(path, errno);
    folder = std::move(opened);
    const std::string name = next.filename().string();
    if (name.empty() || name == "." || name == "..")
      return Refusal{RefusalCode::targetNoFile, path.string(), std::string(kindWords(S_IFDIR)), {}};
    std::optional<struct stat> entry(std::in_place);
    if (::fstatat(folder.number(), name.c_str(), &*entry, AT_SYMLINK_NOFOLLOW) != 0) {
      if (errno != ENOENT) return unwritable(path, errno);
      entry.reset();
    }
    const bool isLink = entry && S_ISLNK(entry->st_mode);
    if ((isLink || links > 0) && !isOurs(folder, entry))
      return Refusal{RefusalCode::linkNotFollowed, path.string(), {}, {}};
    if (entry && !isLink && !S_ISREG(entry->st_mode))
      return Refusal{RefusalCode::targetNoFile, path.string(), std::string(kindWords(entry->st_mode)), {}};
    if (!isLink) return FilePlace{std::move(folder), name};
    const Result<fs::path> leads = linkIn(folder, name, path);
    if (!leads) return leads.refusal();
    next = *leads;
  }
  return unwritable(path, ELOOP);
}

}  // namespace wardchalk::detail
#endif
