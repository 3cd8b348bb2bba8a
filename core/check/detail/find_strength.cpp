#include "core/check/detail/reckoning.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// A strength that the papers state or allow to be worked out, in one drug unit per mL, tablet or capsule.
struct Candidate {
  StrengthFound found;
  StaticText path;
};

Unit oneOf(Unit in) { return in == Unit::L ? Unit::mL : in; }

Candidate labelled(const Strength& label) {
  const Unit one = oneOf(label.in.unit);
  const Number in = *converted(label.in.value, label.in.unit, one);
  return {{label.amount.value / in, label.amount.unit, one, StrengthFrom::labelled}, path::strength};
}

std::optional<Number> mixedVolume(const Stock& stock) {
  if (!stock.diluent || !stock.displacement) return std::nullopt;
  return inMl(*stock.diluent) + inMl(*stock.displacement);
}

/// In the order in which one is preferred (R9). Displacement is never taken as nothing.
std::vector<Candidate> candidates(const Stock& stock) {
  std::vector<Candidate> found;
  if (stock.strength) found.push_back(labelled(*stock.strength));
  if (!stock.kind || *stock.kind != StockKind::powder || !stock.content) return found;
  const Quantity& content = *stock.content;
  if (stock.finalVolume)
    found.push_back(
        {{content.value / inMl(*stock.finalVolume), content.unit, Unit::mL, StrengthFrom::finalVolume},
         path::finalVolume});
  if (const auto volume = mixedVolume(stock))
    found.push_back({{content.value / *volume, content.unit, Unit::mL, StrengthFrom::diluentAndDisplacement},
                     path::displacement});
  return found;
}

/// The step "content over volume" of a powder after mixing.
Step mixingStep(const Stock& stock, const StrengthFound& strength) {
  const Quantity& content = *stock.content;
  const bool byFinal = strength.from == StrengthFrom::finalVolume;
  const Quantity volume = byFinal ? *stock.finalVolume : Quantity{*mixedVolume(stock), Unit::mL};
  const Origin from = Origin::field(byFinal ? path::finalVolume : path::displacement);
  Chain chain{
      {{{content.value, {content.unit}, Origin::field(path::content)}, {volume.value, {volume.unit}, from}}}};
  for (Factor& factor : conversionFactors(Unit::L, Unit::mL, Pounds::exact))
    if (volume.unit == Unit::L) chain.factors.push_back(factor.turned());
  Step step{StepId::strength, {{content.unit}, {Unit::mL}}, Solved{std::move(chain), {}, {}, -1}, {}, {}};
  Solved& solved = std::get<Solved>(step.body);
  solved.product = cancel(solved.chain);
  solved.result = solved.product.exact;
  if (!byFinal) step.sums.push_back({{*stock.diluent, *stock.displacement}, volume});
  return step;
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
void compareStrength(Reckoning& reckoning, const StrengthFound& used, const Candidate& other) {
  const auto perOne = converted(other.found.perOne, other.found.drugUnit, used.drugUnit);
  if (!perOne) return;  // told elsewhere: the drug units do not meet
  const Number difference = (*perOne - used.perOne).absolute();
  const bool far = difference * Number(20) > used.perOne;  // more than 5 % of the one used
  const bool labelled = used.from == StrengthFrom::labelled && used.in == Unit::mL;
  const bool same = labelled && printsAs(*reckoning.given.stock.strength, *perOne);
  if (difference.isZero() || (!far && same)) return;
  const auto apart = showApart(used.perOne, *perOne, Grouping::commas);
  const auto text = [&](const ShownNumber& shown) {
    return shown.marked().append(" ").append(idOf(used.drugUnit)).append("/mL");
  };
  Finding& finding = reckoning.tell(FindingCode::strengthDiffers, other.path,
                                    {{"used", text(apart.first)},
                                     {"other", text(apart.second)},
                                     {"percent", plainPercent(difference * Number(100) / used.perOne)}});
  if (!far) {
    finding.severity = Severity::note;
    return;
  }
  reckoning.amountWithheld = true;
  const auto& dose = reckoning.given.order.dose;
  if (dose && dose->amount.unit == Unit::mL) finding.severity = Severity::undecided;
}

void checkFinalVolume(Reckoning& reckoning) {
  const Stock& stock = reckoning.given.stock;
  if (!stock.kind || *stock.kind != StockKind::powder || !stock.finalVolume || !stock.diluent) return;
  const Number final = inMl(*stock.finalVolume);
  const Number diluent = inMl(*stock.diluent);
  std::vector<Argument> arguments = {{"final", *stock.finalVolume}, {"diluent", *stock.diluent}};
  if (final < diluent) {
    reckoning.tell(FindingCode::finalSmallerThanDiluent, path::finalVolume, std::move(arguments));
    reckoning.amountWithheld = true;
  } else if (final == diluent) {
    reckoning.tell(FindingCode::displacementIgnored, path::finalVolume, std::move(arguments));
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

void findStrength(Reckoning& reckoning) {
  const Stock& stock = reckoning.given.stock;
  if (!stock.kind) reckoning.need(path::stockKind, Need::For::amount);
  checkFinalVolume(reckoning);
  const std::vector<Candidate> found = candidates(stock);
  if (found.empty()) {
    reckoning.need(missingPath(stock), Need::For::amount);
    return;
  }
  reckoning.sheet.strength = found.front().found;
  if (found.front().found.from != StrengthFrom::labelled)
    reckoning.strengthStep = mixingStep(stock, found.front().found);
  for (std::size_t i = 1; i < found.size(); ++i) compareStrength(reckoning, found.front().found, found[i]);
}

}  // namespace wardchalk::detail
