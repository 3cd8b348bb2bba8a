#include "ui/practice/rules_choice.h"

#include <QWheelEvent>

#include "core/words/rules_words.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// Places in the list.
constexpr int classroomPlace = 0;
constexpr int exactPlace = 1;
constexpr int ownPlace = 2;

int placeOf(const HouseRules& rules) {
  if (rules == classroomRules()) return classroomPlace;
  return rules == exactRules() ? exactPlace : ownPlace;
}

}  // namespace

RulesChoice::RulesChoice(QWidget* parent) : QComboBox(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  addItems({tr("classroom"), tr("exact")});
  connect(this, &QComboBox::currentIndexChanged, this, [this] { setAccessibleDescription(words()); });
  setAccessibleDescription(words());
}

HouseRules RulesChoice::rules() const {
  switch (currentIndex()) {
    case exactPlace:
      return exactRules();
    case ownPlace:
      return own_;
    default:
      return classroomRules();
  }
}

void RulesChoice::setRules(const HouseRules& rules) {
  while (count() > ownPlace) removeItem(ownPlace);
  own_ = rules;
  const int place = placeOf(rules);
  if (place == ownPlace) addItem(tr("those of the file: %1").arg(fromCore(rulesTitle(rules))));
  setCurrentIndex(place);
}

QString RulesChoice::words() const { return currentIndex() == ownPlace ? QString() : rulesInWords(rules()); }

/// The wheel never changes it.
void RulesChoice::wheelEvent(QWheelEvent* event) { event->ignore(); }

QString rulesInWords(const HouseRules& rules) {
  switch (placeOf(rules)) {
    case classroomPlace:
      return RulesChoice::tr("classroom: 2.2 lb = 1 kg, weight to 2 decimals, amounts to fixed decimals");
    case exactPlace:
      return RulesChoice::tr("exact: 1 lb = 0.45359237 kg, weight not rounded");
    default:
      return fromCore(rulesTitle(rules));
  }
}

}  // namespace wardchalk::ui
