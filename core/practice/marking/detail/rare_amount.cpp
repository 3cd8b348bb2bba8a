#include <vector>

#include "core/practice/marking/detail/wrong.h"
#include "core/unit/conversion.h"

// Rarer mistakes with the label and with an infusion's volume: S in v is the label, D the dose.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

struct VialOrLabel {
  Number amount;
  Number in;
};

/// The label as it stands; of a powder the vial in its volume after mixing.
std::optional<VialOrLabel> vialOrLabel(const WrongGround& ground) {
  const Papers& papers = ground.papers;
  if (papers.labelAmount && papers.labelIn) return VialOrLabel{*papers.labelAmount, *papers.labelIn};
  const Number* strength = ground.right.exact(StepId::strength);
  const auto& content = ground.key.given.stock.content;
  if (!strength || !content) return std::nullopt;
  return VialOrLabel{content->value, content->value / *strength};
}

/// The dose by its number in the label's unit, and in the unit that it was ordered in.
std::vector<Number> dosesByUnit(const WrongGround& ground, const VialOrLabel& label, const Number& amount) {
  std::vector<Number> doses = {amount * label.amount / label.in};
  const auto& ordered = ground.key.given.order.dose;
  if (ordered && ordered->amount.value != doses.front()) doses.push_back(ordered->amount.value);
  return doses;
}

void addGiveMistakes(const WrongGround& ground, WrongList& list) {
  const auto label = vialOrLabel(ground);
  if (!label) return;
  const UnitProduct& wanted = ground.key.step(ground.step)->lookingFor.over;
  const bool inPieces = !wanted.empty() && wanted.front() != Unit::mL;
  for (const Number& dose : dosesByUnit(ground, *label, list.right())) {
    list.add(M::labelSubtracted, (dose - label->amount).absolute());
    if (inPieces)
      list.add(M::medicineAsPieces, dose);
    else
      list.add(M::doseTimesVolume, dose * label->in);
  }
  if (inPieces) return;
  list.add(M::labelVolumeCopied, label->in);
  const Stock& stock = ground.key.given.stock;
  if (ground.papers.volume) list.times(M::bottleAsLabelVolume, *ground.papers.volume / label->in);
  if (stock.diluent && stock.displacement)
    list.times(M::powderCountedTwice, (label->in + stock.displacement->value) / label->in);
}

/// How strong what is planned will be, in place of how much is needed.
void addVolumeMistakes(const WrongGround& ground, WrongList& list) {
  const Chain* chain = ground.chain();
  if (!chain || !ground.papers.volume || ground.papers.volume->isZero()) return;
  const Number concentration = chain->factors.back().under.value / chain->factors.back().over.value;
  list.add(M::concentrationForVolume, list.right() * concentration / *ground.papers.volume);
}

/// Millilitres an hour already, and times sixty once more; the bag upside down.
void addRateMistakes(const WrongGround& ground, WrongList& list) {
  if (!isRateOrder(ground.key)) {
    list.times(M::sixtyTooMany, Number(60));
    return;
  }
  // S/D × v in place of D/S × v
  if (ground.papers.labelIn && !list.right().isZero())
    list.add(M::labelUpsideDown, *ground.papers.labelIn * *ground.papers.labelIn / list.right());
}

}  // namespace

void addRareAmount(const WrongGround& ground, WrongList& list) {
  if (ground.step == StepId::give) addGiveMistakes(ground, list);
  if (ground.step == StepId::volume) addVolumeMistakes(ground, list);
  if (ground.step == StepId::rate) addRateMistakes(ground, list);
}

}  // namespace wardchalk::detail
