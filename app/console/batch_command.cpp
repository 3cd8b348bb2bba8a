#include <algorithm>
#include <thread>
#include <vector>

#include "app/console/commands.h"
#include "app/console/files.h"
#include "app/console/output.h"
#include "core/record/batch.h"

namespace wardchalk::console {

namespace {

constexpr std::size_t chunkSize = std::size_t{1} << 16U;

BatchForm formOf(const BatchOptions& options) {
  const int processors = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
  return {options.csv ? StreamKind::table : StreamKind::jsonLines,
          options.brief ? WorksheetExtent::brief : WorksheetExtent::whole,
          options.jobs == 0 ? processors : options.jobs};
}

/// Works the input to its end, as long as anybody reads what comes out.
Result<Done> feed(Batch& cases, InputFile& input, const Output& out) {
  std::vector<char> chunk(chunkSize);
  while (out.isWritten() && !cases.refusal()) {
    const Result<std::size_t> size = input.read(chunk);
    if (!size) return size.refusal();
    if (*size == 0) return Done{};
    cases.take({chunk.data(), *size});
  }
  return Done{};
}

}  // namespace

int batch(const BatchOptions& options) {
  const std::string file = options.inputFile.empty() ? "-" : options.inputFile;
  if (!oneFromInput({file, options.rulesFile})) return unusable;
  const std::optional<HouseRules> rules = rulesFrom(options.rulesFile);
  if (!rules) return unusable;
  Result<InputFile> opened = openInput(file);
  const Result<Done> apart = checkNotInput("-", file);
  if (!opened || !apart) {
    tell(inputName(file), opened ? apart.refusal() : opened.refusal());
    return unusable;
  }
  InputFile input = *std::move(opened);
  Output out(options.csv ? Output::Kind::table : Output::Kind::json);
  Batch cases(*rules, formOf(options), [&](std::string_view text) { out.add(text); });
  std::optional<Refusal> refusal = feed(cases, input, out).refusalIfAny();
  cases.end();
  if (!refusal) refusal = cases.refusal();
  if (refusal) tell(inputName(file), *refusal);
  return out.close(refusal ? unusable : cases.count().refused > 0 ? someLinesFailed : done);
}

}  // namespace wardchalk::console
