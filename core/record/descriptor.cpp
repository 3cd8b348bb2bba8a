#include "core/record/descriptor.h"

#include <sys/stat.h>

#if defined(__unix__) || defined(__APPLE__)
#include <unistd.h>
#else
#include <io.h>
#endif

namespace wardchalk {

void Descriptor::close() {
  if (number_ >= 0 && !lent_) ::close(number_);
  number_ = -1;
}

std::string_view kindWords(unsigned mode) {
  switch (mode & static_cast<unsigned>(S_IFMT)) {
    case S_IFDIR:
      return "a folder";
#ifdef S_IFIFO
    case S_IFIFO:
      return "a pipe";
#endif
#ifdef S_IFSOCK
    case S_IFSOCK:
      return "a socket";
#endif
    default:
      return "a device";
  }
}

}  // namespace wardchalk
