#include "core/practice/marking/detail/wrong.h"
#include "core/unit/conversion.h"

// Further mistakes with the label, a powder, and the amount. S in v stands for the label, D for the dose in
// its unit.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

/// The label's volume read as one more or one less, or as 5 mL, as labels often have it.
void addMisread(const Number& volume, WrongList& list) {
  for (const Number& other : {volume + Number(1), volume - Number(1), Number(5)})
    if (other > Number(1) && other != volume) list.times(M::labelMisread, other / volume);
}

void addLabelMistakes(const WrongGround& ground, WrongList& list) {
  const Papers& papers = ground.papers;
  if (!papers.labelAmount || !papers.labelIn || !papers.labelStatesVolume) return;
  addMisread(*papers.labelIn, list);
  const Number dose = list.right() * *papers.labelAmount / *papers.labelIn;
  list.add(M::dividedByVolumeAlone, dose / *papers.labelIn);
}

/// The volume that the key's strength stands for.
std::optional<Number> mixedVolume(const WrongGround& ground) {
  const Number* strength = ground.right.exact(StepId::strength);
  const auto& content = ground.key.given.stock.content;
  if (!strength || !content) return std::nullopt;
  return content->value / *strength;
}

/// The powder's own volume, stated or what mixing adds to the diluent.
std::optional<Number> powderVolume(const Stock& stock, const Number& mixed) {
  if (stock.displacement) return stock.displacement->value;
  if (stock.diluent && stock.diluent->value < mixed) return mixed - stock.diluent->value;
  return std::nullopt;
}

/// What is left out or counted twice of a powder's volume, where the amount is worked from the vial.
void addPowderAmount(const WrongGround& ground, WrongList& list) {
  const Stock& stock = ground.key.given.stock;
  const auto volume = mixedVolume(ground);
  if (!volume) return;
  if (stock.diluent) list.times(M::diluentAsFinalVolume, stock.diluent->value / *volume);
  if (const auto powder = powderVolume(stock, *volume))
    list.times(M::powderCountedTwice, (*volume + *powder) / *volume);
  list.times(M::dividedByVolumeAlone, stock.content->value / (*volume * *volume));
}

void addStrengthMistakes(const WrongGround& ground, WrongList& list) {
  const Stock& stock = ground.key.given.stock;
  const auto volume = mixedVolume(ground);
  if (!volume || !stock.content) return;
  const Number& content = stock.content->value;
  list.add(M::timesStrength, content * *volume);
  list.add(M::labelVolumeLeftOut, content);
  if (ground.key.orderedDose) list.add(M::orderOverVolume, ground.key.orderedDose->value / *volume);
  const auto own = powderVolume(stock, *volume);
  if (!own || own->isZero()) return;
  const Number& powder = *own;
  list.add(M::powderCountedTwice, content / (*volume + powder));
  list.add(M::displacementAlone, content / powder);
  for (const auto* fluid : {&stock.diluent, &stock.finalVolume})
    if (*fluid && (*fluid)->value > powder)
      list.add(M::displacementSubtracted, content / ((*fluid)->value - powder));
  if (*volume > powder + powder) list.add(M::displacementSubtracted, content / (*volume - powder - powder));
}

void addAmountMistakes(const WrongGround& ground, WrongList& list) {
  addLabelMistakes(ground, list);
  addPowderAmount(ground, list);
  const Papers& papers = ground.papers;
  if (papers.orderDoses != Number(1)) list.times(M::sharedOnceTooOften, Number(1) / papers.orderDoses);
  if (papers.kg) list.times(M::sizeCountedTwice, *papers.kg);
  if (papers.m2) list.times(M::sizeCountedTwice, *papers.m2);
}

}  // namespace

void addFurtherAmount(const WrongGround& ground, WrongList& list) {
  if (ground.step == StepId::give) addAmountMistakes(ground, list);
  if (ground.step == StepId::strength) addStrengthMistakes(ground, list);
}

}  // namespace wardchalk::detail
