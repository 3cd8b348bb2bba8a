#include "core/record/input_file.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#if defined(__unix__) || defined(__APPLE__)
#include <unistd.h>
#else
#include <io.h>
#endif

#include "core/record/path_text.h"

namespace wardchalk {

namespace {

constexpr std::size_t largestRead = std::size_t{1} << 20U;

#if defined(__unix__) || defined(__APPLE__)
/// Without waiting for the other end of a pipe, and no terminal becomes ours.
constexpr int readingFlags = O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC;
int openForReading(const std::filesystem::path& path) { return ::open(path.c_str(), readingFlags); }
int statOf(const std::filesystem::path& path, struct stat& status) { return ::stat(path.c_str(), &status); }
#else
int openForReading(const std::filesystem::path& path) { return ::_wopen(path.c_str(), O_RDONLY | O_BINARY); }
int statOf(const std::filesystem::path& path, struct stat& status) {
  struct _stat64 found {};
  const int failed = ::_wstat64(path.c_str(), &found);
  status.st_mode = found.st_mode;
  return failed;
}
#endif

Refusal unreadable(const std::string& name, std::string_view why) {
  return {RefusalCode::fileUnreadable, std::string(name).append(" ").append(why), {}, {}};
}

std::string whyNotOpened(int error) {
  switch (error) {
    case ENOENT:
    case ENOTDIR:
      return "is not there";
    case EACCES:
    case EPERM:
      return "may not be opened";
    case ELOOP:
      return "is a link that leads to no end";
    case ENAMETOOLONG:
      return "has too long a name";
    case ENXIO:
      return "is a socket, not a file";
    default:
      return "cannot be opened (" + std::generic_category().message(error) + ")";
  }
}

bool isRegular(const struct stat& status) {
  return (static_cast<unsigned>(status.st_mode) & static_cast<unsigned>(S_IFMT)) == S_IFREG;
}

Refusal noFile(const std::string& name, const struct stat& status) {
  return unreadable(name, std::string("is ").append(kindWords(status.st_mode)).append(", not a file"));
}

}  // namespace

/// Looked at before it is opened, since opening alone can start a device; and after, since another may stand
/// there by then.
Result<InputFile> InputFile::open(const std::filesystem::path& path) {
  const std::string name = pathText(path);
  struct stat status {};
  if (statOf(path, status) != 0) return unreadable(name, whyNotOpened(errno));
  if (!isRegular(status)) return noFile(name, status);
  Descriptor file(openForReading(path));
  if (!file.isOpen()) return unreadable(name, whyNotOpened(errno));
  if (::fstat(file.number(), &status) != 0) return unreadable(name, whyNotOpened(errno));
  if (!isRegular(status)) return noFile(name, status);
  return InputFile(name, std::move(file), static_cast<std::uint64_t>(status.st_size));
}

InputFile InputFile::standardInput() { return {"standard input", Descriptor(0, true), 0}; }

Result<std::size_t> InputFile::read(std::span<char> into) {
  std::size_t had = 0;
  while (had < into.size()) {
    const auto done = ::read(file_.number(), into.data() + had, std::min(largestRead, into.size() - had));
    if (done < 0 && errno == EINTR) continue;
    if (done < 0) {
      const std::string why = std::generic_category().message(errno);
      return unreadable(name_, "broke off while it was read (" + why + ")");
    }
    if (done == 0) break;
    had += static_cast<std::size_t>(done);
  }
  return had;
}

}  // namespace wardchalk
