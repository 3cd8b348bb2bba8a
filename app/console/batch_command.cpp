#include <cstdio>
#include <iostream>
#include <memory>
#include <string_view>
#include <thread>
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

/// Gathers small answers before they are written, and remembers when they could not be.
class Output {
 public:
  void add(std::string_view text) {
    gathered_.append(text);
    if (gathered_.size() >= chunkSize) flush();
  }
  void flush() {
    written_ = written_ && std::fwrite(gathered_.data(), 1, gathered_.size(), stdout) == gathered_.size();
    gathered_.clear();
  }
  [[nodiscard]] bool close() {
    flush();
    return std::fflush(stdout) == 0 && written_;
  }
  [[nodiscard]] bool isWritten() const { return written_; }

 private:
  std::string gathered_;
  bool written_ = true;
};

BatchForm formOf(const BatchOptions& options) {
  const int processors = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
  return {options.csv ? StreamKind::table : StreamKind::jsonLines,
          options.brief ? WorksheetExtent::brief : WorksheetExtent::whole,
          options.jobs == 0 ? processors : options.jobs};
}

void feed(Batch& cases, std::FILE* input, const Output& out) {
  std::vector<char> chunk(chunkSize);
  while (const std::size_t size = std::fread(chunk.data(), 1, chunk.size(), input)) {
    cases.take({chunk.data(), size});
    if (!out.isWritten() || cases.refusal()) return;
  }
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
  Output out;
  Batch cases(*rules, formOf(options), [&](std::string_view text) { out.add(text); });
  feed(cases, input.get(), out);
  cases.end();
  if (!out.close() || std::ferror(input.get()) != 0) {
    std::cerr << "wardchalk-console: the batch broke off while it was read or written\n";
    return unusable;
  }
  if (cases.refusal()) {
    tell(fromInput ? "standard input" : options.inputFile, *cases.refusal());
    return unusable;
  }
  return cases.count().refused > 0 ? someLinesFailed : done;
}

}  // namespace wardchalk::console
