#include "app/console/output.h"

#include <cerrno>
#include <cstdio>
#include <iostream>
#include <system_error>

#include "core/words/visible_text.h"

#if defined(__unix__) || defined(__APPLE__)
#include <unistd.h>
#endif

namespace wardchalk::console {

namespace {

constexpr std::size_t gatheredAtOnce = std::size_t{1} << 16U;

bool isTerminal() {
#if defined(__unix__) || defined(__APPLE__)
  return ::isatty(STDOUT_FILENO) == 1;
#else
  return true;
#endif
}

std::string whyNotWritten(int error) {
  if (error == ENOSPC) return "there is no room left";
  if (error == EFBIG) return "the file would be larger than one file may be there";
  if (error == EBADF) return "it is closed";
  return std::generic_category().message(error);
}

}  // namespace

Output::Output(Kind kind) : isShown_(kind == Kind::text || (kind == Kind::table && isTerminal())) {}

void Output::add(std::string_view text) {
  if (isShown_)
    gathered_.append(visibleText(text));
  else
    gathered_.append(text);
  if (gathered_.size() >= gatheredAtOnce) flush();
}

void Output::flush() {
  errno = 0;
  const bool written = std::fwrite(gathered_.data(), 1, gathered_.size(), stdout) == gathered_.size() &&
                       std::fflush(stdout) == 0;
  if (!written && error_ == 0) error_ = errno == 0 ? EIO : errno;
  gathered_.clear();
}

int Output::close(int status) {
  flush();
  if (error_ == 0) return status;
  if (error_ != EPIPE)
    std::cerr << "wardchalk-console: standard output cannot be written to: " << whyNotWritten(error_)
              << ". What came out is not whole.\n";
  return unusable;
}

int print(std::string_view text, Output::Kind kind, int status) {
  Output out(kind);
  out.add(text);
  return out.close(status);
}

}  // namespace wardchalk::console
