#include "core/practice/marking/detail/wrong.h"

// Mistakes with the label, the amount and a powder's volume. x stands for the right amount, S in v for the
// label and c = S ÷ v for its strength: x = D ÷ c, so that the dose in the label's own unit is D = x × c.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

struct Label {
  Number amount;
  Number in;
  bool statesVolume = false;  ///< so that it can be left out, even where it is 1
};

/// Ways to read the label: as it stands, and for a mixed powder the whole vial in its whole volume.
std::vector<Label> labelsOf(const WrongGround& ground) {
  std::vector<Label> labels;
  const Chain* strength = chainOf(ground.key, StepId::strength);
  if (strength && !strength->factors.empty())
    labels.push_back({strength->factors.front().over.value, strength->factors.front().under.value, true});
  if (const Number* found = ground.right.result(StepId::strength))
    labels.push_back({*found, Number(1)});
  else if (ground.papers.labelAmount && ground.papers.labelIn)
    labels.push_back({*ground.papers.labelAmount, *ground.papers.labelIn, ground.papers.labelStatesVolume});
  return labels;
}

void addWrongLabel(const Label& label, WrongList& list) {
  const Number strength = label.amount / label.in;
  const Number& amount = list.right();
  const Number dose = amount * strength;
  list.add(M::labelUpsideDown, label.amount * label.in / dose);
  list.add(M::labelUpsideDown, label.amount / label.in / dose);
  list.add(M::timesStrength, dose * strength);
  if (!label.statesVolume) return;
  list.add(M::labelVolumeLeftOut, dose / label.amount);
  list.add(M::dividedByLabelVolume, dose / (label.amount * label.in));
}

/// The reference's dose in place of the ordered one, either end. A flat one needs no step to be found.
void addReferenceDose(const WrongGround& ground, WrongList& list) {
  const Worksheet& key = ground.key;
  if (!key.orderedDose) return;
  const Number* ordered = ground.right.exact(StepId::orderedDose);
  const Number dose = ordered ? *ordered : key.orderedDose->value;
  const auto add = [&](StepId step, const std::optional<Quantity>& end) {
    if (const Number* found = ground.right.exact(step))
      list.times(M::referenceMeasured, *found / dose);
    else if (end)
      list.times(M::referenceMeasured, end->value / dose);
  };
  add(StepId::limitDose, key.limitDose ? std::optional(key.limitDose->amount) : std::nullopt);
  add(StepId::lowDose, key.lowDose);
}

void addSizeAgain(const WrongGround& ground, WrongList& list) {
  const auto& high = ground.key.given.reference.high;
  if (!high || high->perSize == PerSize::none) return;
  const auto& size = high->perSize == PerSize::kg ? ground.papers.kg : ground.papers.m2;
  if (size) list.times(M::sizeCountedTwice, *size);
}

}  // namespace

void addWrongAmount(const WrongGround& ground, WrongList& list) {
  if (ground.step != StepId::give) return;
  for (const Label& label : labelsOf(ground)) addWrongLabel(label, list);
  addReferenceDose(ground, list);
  if (ground.papers.orderDoses != Number(1)) list.times(M::dayAtOnce, ground.papers.orderDoses);
  addSizeAgain(ground, list);
}

void addWrongMixing(const WrongGround& ground, WrongList& list) {
  const Stock& stock = ground.key.given.stock;
  if (ground.step != StepId::strength || !stock.content) return;
  const Number& content = stock.content->value;
  const Number volume = content / list.right();
  list.add(M::labelUpsideDown, volume / content);
  if (stock.diluent) list.add(M::diluentAsFinalVolume, content / stock.diluent->value);
  if (stock.displacement) list.add(M::powderCountedTwice, content / (volume + stock.displacement->value));
}

}  // namespace wardchalk::detail
