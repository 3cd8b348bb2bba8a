#include "core/record/detail/write_fault.h"

#include <cerrno>
#include <system_error>

#include "core/record/path_text.h"

namespace wardchalk::detail {

namespace {

RefusalCode whyUnwritable(int error) {
  switch (error) {
    case ENOSPC:
#ifdef EDQUOT
    case EDQUOT:
#endif
      return RefusalCode::diskFull;
    case EFBIG:  // what the file system, or whoever started the program, allows one file
      return RefusalCode::fileSizeLimited;
    case EROFS:
      return RefusalCode::diskReadOnly;
    case EACCES:
    case EPERM:
      return RefusalCode::folderReadOnly;
    case ENOENT:
    case ENOTDIR:
      return RefusalCode::folderMissing;
    case ENAMETOOLONG:
      return RefusalCode::nameTooLong;
    case ELOOP:
      return RefusalCode::linkLoop;
    default:
      return RefusalCode::fileUnwritable;
  }
}

}  // namespace

Refusal unwritable(const std::filesystem::path& path, int error) {
  const RefusalCode code = whyUnwritable(error);
  std::string typed = pathText(path);
  if (code == RefusalCode::fileUnwritable)
    typed.append(" (").append(std::generic_category().message(error)).append(")");
  return {code, std::move(typed), {}, {}};
}

}  // namespace wardchalk::detail
