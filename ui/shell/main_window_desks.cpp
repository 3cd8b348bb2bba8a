#include "core/words/rules_words.h"
#include "core/words/spoken_verdict.h"
#include "ui/access/announcer.h"
#include "ui/form/form.h"
#include "ui/shell/actions.h"
#include "ui/shell/caution_bar.h"
#include "ui/shell/idle_desk.h"
#include "ui/shell/main_window.h"
#include "ui/shell/offered_actions.h"
#include "ui/shell/practice_desk.h"
#include "ui/shell/rules_desk.h"
#include "ui/shell/second_check_desk.h"
#include "ui/shell/second_check_words.h"
#include "ui/shell/settings_desk.h"
#include "ui/theme/text.h"
#include "ui/working/working_pane.h"

// The window's share in house rules, second check and cover: what each of them changes in the others.

namespace wardchalk::ui {

void MainWindow::buildDesks(QStackedWidget* pages, QVBoxLayout* notices) {
  const WindowParts parts{this, editor_, session_, rules_, dialogs_, clipboard_, pages, notices};
  rulesDesk_ = new RulesDesk(parts, rules_, settings_);
  second_ = new SecondCheckDesk(parts);
  idle_ = new IdleDesk(parts);
  idle_->coverAfter(settings_.coverMinutes());
  settingsDesk_ = new SettingsDesk(parts, settings_, *rulesDesk_, unitsChosen_);
}

void MainWindow::bindSettings() {
  actions_->bind(ActionId::settings, [this] { settingsDesk_->open(); });
  connect(settingsDesk_, &SettingsDesk::textSizeChosen, this, &MainWindow::useTextSize);
  connect(settingsDesk_, &SettingsDesk::unitsChosen, this, &MainWindow::setUnitSystem);
  connect(settingsDesk_, &SettingsDesk::coverMinutesChosen, idle_, &IdleDesk::coverAfter);
  connect(settingsDesk_, &SettingsDesk::paperChosen, practice_, &PracticeDesk::followPaper);
  connect(practice_, &PracticeDesk::paperChosen, settingsDesk_, &SettingsDesk::follow);
}

void MainWindow::bindCheckActions() {
  actions_->bind(ActionId::rulesEdit, [this] { rulesDesk_->edit(); });
  actions_->bind(ActionId::secondCheck, [this] { second_->begin(); });
  actions_->bind(ActionId::secondCompare, [this] { second_->compare(); });
  actions_->bind(ActionId::secondLeave, [this] { second_->askToLeave(); });
  connect(rulesDesk_, &RulesDesk::changed, this, &MainWindow::useRules);
  connect(second_, &SecondCheckDesk::changed, this, &MainWindow::followSecondCheck);
  connect(second_, &SecondCheckDesk::begun, this, [this] { setUnitSystem(UnitSystem::none); });
  connect(second_, &SecondCheckDesk::begun, form_, &Form::focusTop);
  connect(second_, &SecondCheckDesk::fieldWanted, this, [this](const QString& path) {
    if (path.isEmpty()) return form_->focusLast();
    form_->focusField(path);
  });
  connect(second_, &SecondCheckDesk::ended, this, [this] {
    if (!session_.record()) return;
    announce(*this, secondCheckWords(session_.record()) + u' ' + fromCore(spokenVerdict(shown_)));
  });
  connect(idle_, &IdleDesk::covering, this, &MainWindow::hideOther);
  connect(idle_, &IdleDesk::covered, this, &MainWindow::followDesks);
  connect(idle_, &IdleDesk::uncovered, this, [this] {
    second_->uncover();
    followDesks();
    if (!session_.isComparing()) form_->focusLast();
  });
  connect(idle_, &IdleDesk::newChildWanted, this, &MainWindow::newChild);
}

/// What stands at the bottom, and whether there is anything to hide.
void MainWindow::followCase() {
  idle_->follow();
  const bool stands = !editor_.draft().isEmpty() && !session_.isUnderWay() && !session_.isCovered();
  caution_->setSecondCheck(stands ? secondCheckWords(session_.record()) : QString());
}

/// What the window offers and is called follows from what is under way: a second check, a cover.
void MainWindow::followDesks() {
  followCase();
  const bool isFormSeen = !session_.isCovered() && !session_.isComparing();
  actions_->leaveOnly(offeredActions(session_.state()));
  pane_->offerExample(isFormSeen && !session_.isUnderWay());
  form_->offerList(isFormSeen);
  nameWindow();
}

/// A disagreement that was recorded stands in the worksheet, and goes from it when it is settled or void.
void MainWindow::followSecondCheck() {
  const bool stands = sheet_.finding(FindingCode::secondDiffers) != nullptr;
  const bool empty = editor_.draft().isEmpty();
  if (stands != session_.disagreement().has_value() && !empty) workAgain();
  // what a required second check holds back is told when it agrees, and held back when that is void
  else if (sheet_.given.reference.secondCheckRequired && !empty)
    showWhatMayBeSeen();
  followDesks();
}

void MainWindow::useRules() {
  caution_->setRules(fromCore(rulesTitle(rules_)));
  second_->followRules();
  idle_->followRules();
  setUnitSystem(unitsChosen_);  // every line and every figure is read anew
  settingsDesk_->follow();
}

/// Before the entries leave the form: what else shows them. The board closes with the other windows.
void MainWindow::hideOther() { second_->cover(); }

}  // namespace wardchalk::ui
