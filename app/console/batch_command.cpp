#include <cstdio>
#include <iostream>
#include <memory>
#include <string_view>
#include <vector>

#include "app/console/commands.h"
#include "core/record/batch.h"

namespace wardchalk::console {

namespace {

constexpr std::size_t chunkSize = std::size_t{1} << 16U;

struct CloseFile {
  void operator()(std::FILE* file) const {
    if (file != nullptr && file != stdin) std::fclose(file);
  }
};
using File = std::unique_ptr<std::FILE, CloseFile>;

/// Cuts a stream into lines of bounded length and hands each to the batch. A line that is too long is dropped as it
/// comes, so that memory stays the same whatever is fed in.
class LineFeed {
 public:
  explicit LineFeed(Batch& batch) : batch_(batch) {}

  void take(std::string_view chunk, std::string& out) {
    while (!chunk.empty()) {
      const std::size_t end = chunk.find('\n');
      append(chunk.substr(0, end));
      if (end == std::string_view::npos) return;
      finish(out);
      chunk.remove_prefix(end + 1);
    }
  }

  /// A last line without a line end counts as a line.
  void end(std::string& out) {
    if (!line_.empty() || tooLong_) finish(out);
  }

 private:
  void append(std::string_view part) {
    tooLong_ = tooLong_ || line_.size() + part.size() > longestBatchLine;
    if (tooLong_) line_.clear();
    else line_.append(part);
  }

  void finish(std::string& out) {
    if (tooLong_) batch_.answerTooLong(out);
    else batch_.answer(line_, out);
    line_.clear();
    tooLong_ = false;
  }

  Batch& batch_;
  std::string line_;
  bool tooLong_ = false;
};

bool flush(std::string& out) {
  const bool written = std::fwrite(out.data(), 1, out.size(), stdout) == out.size();
  out.clear();
  return written;
}

}  // namespace

int batch(const BatchOptions& options) {
  const std::optional<HouseRules> rules = rulesFrom(options.rulesFile);
  if (!rules) return unusable;
  const bool fromInput = options.inputFile.empty() || options.inputFile == "-";
  const File input(fromInput ? stdin : std::fopen(options.inputFile.c_str(), "rb"));
  if (!input) {
    tell(options.inputFile, {RefusalCode::fileUnreadable, options.inputFile + " may not be opened", {}, {}});
    return unusable;
  }
  Batch lines(*rules, options.brief ? WorksheetExtent::brief : WorksheetExtent::whole);
  LineFeed feed(lines);
  std::vector<char> chunk(chunkSize);
  std::string out;
  bool written = true;
  while (const std::size_t size = std::fread(chunk.data(), 1, chunk.size(), input.get())) {
    feed.take({chunk.data(), size}, out);
    if (out.size() >= chunkSize) written = flush(out) && written;
    if (!written) break;
  }
  feed.end(out);
  written = flush(out) && std::fflush(stdout) == 0 && written;
  if (!written || std::ferror(input.get()) != 0) {
    std::cerr << "wardchalk-console: the batch broke off while it was read or written\n";
    return unusable;
  }
  return lines.count().refused > 0 ? someLinesFailed : done;
}

}  // namespace wardchalk::console
