#include "core/check/detail/telling.h"
#include "core/check/sizes_used.h"

namespace wardchalk::detail {

namespace {

/// Whether anything is worked out or judged by a size that the finding doubts.
bool isUsed(const SizesUsed& used, const Finding& finding) {
  switch (finding.code) {
    case FindingCode::weightUnlikely:
    case FindingCode::weightOld:
    case FindingCode::weightUnlikelyForHeight:
      return used.weight;  // a height is used only beside it
    case FindingCode::heightUnlikely:
      return used.height;
    case FindingCode::sizeImplausible:
      if (finding.field == path::bsa) return used.surface;
      if (finding.field == path::height) return used.height;
      return used.weight;
    default:
      // the charted surface or the size it is held against is wrong, and either may be the one in use
      return used.weight || used.surface;
  }
}

/// A class may note what only a bedside can settle: a weight for the height of a child whose age nobody
/// states.
bool isNotedOnly(const Notebook& notes, const Finding& finding) {
  return finding.code == FindingCode::weightUnlikelyForHeight && !notes.given.child.age &&
         notes.rules.sizeWithoutAge == SizeWithoutAge::note;
}

bool saysTooLittle(FindingCode code) {
  return code == FindingCode::belowLow || code == FindingCode::belowUsual;
}

}  // namespace

void askForOldWeight(Notebook& notes) {
  const auto& oldest = notes.rules.weightOlderThan;
  const Child& child = notes.given.child;
  if (!oldest || !child.weight || !sizesUsed(notes.given).weight) return;
  if (child.weighed && child.weighed->days() <= Age{*oldest}.days()) return;
  std::vector<Argument> arguments = {{"weight", *child.weight}, {"limit", *oldest}};
  if (child.weighed) arguments.push_back({"weighed", child.weighed->written});
  notes.tell(FindingCode::weightOld, path::weighed, std::move(arguments));
}

void judgeSizeDoubts(Notebook& notes) {
  const SizesUsed used = sizesUsed(notes.given);
  bool doubted = false;
  for (Finding& finding : notes.findings) {
    if (!doubtsSize(finding.code)) continue;
    if (!isUsed(used, finding) || isNotedOnly(notes, finding)) finding.severity = Severity::note;
    doubted = doubted || finding.severity != Severity::note;
  }
  if (!doubted) return;
  for (Finding& finding : notes.findings)
    if (saysTooLittle(finding.code)) finding.arguments.push_back({"by", ArgumentWord::sizeEntered});
}

}  // namespace wardchalk::detail
