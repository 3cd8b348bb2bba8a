#include "core/record/line_reader.h"

#include "core/record/case_stream.h"

namespace wardchalk {

bool LineReader::fill() {
  constexpr std::size_t size = std::size_t{1} << 16U;
  piece_.resize(size);
  at_ = 0;
  const Result<std::size_t> read = file_.read(piece_);
  piece_.resize(read ? *read : 0);
  if (!read) brokeOff_ = read.refusal();
  return !piece_.empty();
}

std::optional<Result<std::string>> LineReader::next() {
  std::string line;
  bool tooLong = false;
  bool ended = false;
  if (at_ == piece_.size() && !fill()) return std::nullopt;
  while (!ended && (at_ < piece_.size() || fill())) {
    const std::size_t end = piece_.find('\n', at_);
    ended = end != std::string::npos;
    const std::size_t stop = ended ? end : piece_.size();
    tooLong = tooLong || line.size() + (stop - at_) > longestBatchLine;
    if (tooLong)
      line.clear();  // dropped as it comes
    else
      line.append(piece_, at_, stop - at_);
    at_ = ended ? stop + 1 : stop;
  }
  if (tooLong) return Refusal{RefusalCode::rowTooLong, {}, "1 MiB", {}};
  if (line.ends_with('\r')) line.pop_back();
  return line;
}

}  // namespace wardchalk
