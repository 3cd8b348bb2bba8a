#include "core/check/detail/factors.h"
#include "core/check/detail/strengths.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// A strength that the papers state or allow to be worked out, in one drug unit per mL, tablet or capsule.
struct Candidate {
  StrengthFound found;
  StaticText path;
  Step step;
};

/// What a mL, a tablet or a capsule holds, by a chain of one entry over another; `drug` and `in` are the
/// units of these. None when it does not come out so: then the whole reckoning has failed.
std::optional<Candidate> candidateBy(Notebook& notes, Factor held, Unit drug, Unit in, StrengthFrom from,
                                     StaticText path) {
  const Unit one = in == Unit::L ? Unit::mL : in;
  Chain chain{{std::move(held)}};
  convertBelow(chain, in, one);
  const Units wanted{{drug}, {one}};
  std::optional<Solution> solution = notes.found(solve(chain, wanted));
  if (!solution) return std::nullopt;
  const Number perOne = solution->product.exact;
  Solved solved{std::move(chain), std::move(solution->product), perOne, -1};
  return Candidate{{perOne, drug, one, from}, path, {StepId::strength, wanted, std::move(solved), {}, {}}};
}

/// Diluent and displacement added up; displacement is never taken as nothing.
std::optional<Sum> mixedVolume(const Stock& stock) {
  if (!stock.diluent || !stock.displacement) return std::nullopt;
  const Number total = inMl(*stock.diluent) + inMl(*stock.displacement);
  return Sum{{*stock.diluent, *stock.displacement}, {total, Unit::mL}};
}

/// In the order in which one is preferred (R9).
std::vector<Candidate> candidates(Notebook& notes) {
  const Stock& stock = notes.given.stock;
  std::vector<Candidate> all;
  const auto add = [&](Factor held, Unit drug, Unit in, StrengthFrom from, StaticText path) {
    auto candidate = candidateBy(notes, std::move(held), drug, in, from, path);
    if (candidate) all.push_back(std::move(*candidate));
  };
  if (const auto& label = stock.strength)
    add(labelFactor(*label, path::strength), label->amount.unit, label->in.unit, StrengthFrom::labelled,
        path::strength);
  if (!stock.kind || *stock.kind != StockKind::powder || !stock.content) return all;
  const Quantity& content = *stock.content;
  if (const auto& volume = stock.finalVolume)
    add(entriesFactor(content, path::content, *volume, path::finalVolume), content.unit, volume->unit,
        StrengthFrom::finalVolume, path::finalVolume);
  if (auto mixed = mixedVolume(stock)) {
    add(entriesFactor(content, path::content, mixed->total, path::displacement), content.unit,
        mixed->total.unit, StrengthFrom::diluentAndDisplacement, path::displacement);
    if (!all.empty()) all.back().step.sums.push_back(std::move(*mixed));
  }
  return all;
}

int decimalsOf(const Number& value) {
  int decimals = 0;
  while (decimals < 20 && !value.endsWithin(decimals)) ++decimals;
  return decimals;
}

/// Whether a strength per mL, in the label's drug unit, is the labelled one as it is printed: "124.7 mg/5 mL"
/// is "125 mg/5 mL".
bool printsAs(const Strength& label, const Number& perMl) {
  const Number amount = perMl * inMl(label.in);
  return amount.rounded(decimalsOf(label.amount.value)) == label.amount.value;
}

/// Compares one more strength with the one used: far apart, worth a note, or the same as it is printed.
void compareStrength(Notebook& notes, Strengths& strengths, const Candidate& other) {
  const StrengthFound& used = *strengths.used;
  const auto perOne = converted(other.found.perOne, other.found.drugUnit, used.drugUnit);
  if (!perOne) return;  // told elsewhere: the drug units do not meet
  const Number difference = (*perOne - used.perOne).absolute();
  const bool far = difference * Number(20) > used.perOne;  // more than 5 % of the one used
  const bool labelled = used.from == StrengthFrom::labelled && used.in == Unit::mL;
  const bool same = labelled && printsAs(*notes.given.stock.strength, *perOne);
  if (difference.isZero() || (!far && same)) return;
  const int significant = digitsApart(used.perOne, *perOne);
  const auto perMl = [&](const Number& value) {
    return QuantityPer{{value, used.drugUnit}, {Unit::mL}, significant};
  };
  Finding& finding = notes.tell(FindingCode::strengthDiffers, other.path,
                                {{"used", perMl(used.perOne)},
                                 {"other", perMl(*perOne)},
                                 {"percent", PlainPercent{difference * Number(100) / used.perOne}}});
  if (!far) {
    finding.severity = Severity::note;
    return;
  }
  strengths.amountWithheld = true;
  const auto& dose = notes.given.order.dose;
  if (dose && dose->amount.unit == Unit::mL) finding.severity = Severity::undecided;
}

void checkFinalVolume(Notebook& notes, Strengths& strengths) {
  const Stock& stock = notes.given.stock;
  if (!stock.kind || *stock.kind != StockKind::powder || !stock.finalVolume || !stock.diluent) return;
  const Number final = inMl(*stock.finalVolume);
  const Number diluent = inMl(*stock.diluent);
  std::vector<Argument> arguments = {{"final", *stock.finalVolume}, {"diluent", *stock.diluent}};
  if (final < diluent) {
    notes.tell(FindingCode::finalSmallerThanDiluent, path::finalVolume, std::move(arguments));
    strengths.amountWithheld = true;
  } else if (final == diluent) {
    notes.tell(FindingCode::displacementIgnored, path::finalVolume, std::move(arguments));
  }
}

/// The first entry that would give a strength, for someone who has none yet.
StaticText missingPath(const Stock& stock) {
  if (!stock.kind) return path::stockKind;
  if (*stock.kind != StockKind::powder) return path::strength;
  if (!stock.content) return path::content;
  return path::finalVolume;
}

}  // namespace

std::optional<Strength> bagOf(const Stock& stock, const Strengths& strengths) {
  if (!stock.strength || dimensionOf(stock.strength->in.unit) != Dimension::volume ||
      strengths.amountWithheld)
    return std::nullopt;
  return stock.strength;
}

Strengths findStrength(Notebook& notes) {
  Strengths strengths;
  const Stock& stock = notes.given.stock;
  if (!stock.kind) notes.need(path::stockKind, Need::For::amount);
  checkFinalVolume(notes, strengths);
  std::vector<Candidate> found = candidates(notes);
  if (found.empty()) {
    notes.need(missingPath(stock), Need::For::amount);
    return strengths;
  }
  strengths.used = found.front().found;
  if (found.front().found.from != StrengthFrom::labelled)
    strengths.mixing = std::move(found.front().step);  // what a label says needs no line
  for (std::size_t i = 1; i < found.size(); ++i) compareStrength(notes, strengths, found[i]);
  return strengths;
}

}  // namespace wardchalk::detail
