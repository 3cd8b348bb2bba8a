#include "ui/shell/settings_desk.h"

#include "core/rules/house_rules.h"
#include "core/session/case_session.h"
#include "core/words/rules_words.h"
#include "ui/shell/other_windows.h"
#include "ui/shell/rules_desk.h"
#include "ui/shell/settings.h"
#include "ui/shell/settings_dialog.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

SettingsDesk::SettingsDesk(const WindowParts& parts, Settings& settings, RulesDesk& rules,
                           const UnitSystem& units)
    : QObject(parts.window), parts_(parts), settings_(settings), rules_(rules), units_(units) {}

/// It tells nothing of a case, so that it comes back after a cover, also for a new child.
void SettingsDesk::open() {
  delete dialog_;
  dialog_ = new SettingsDialog(parts_.window);
  connectDialog();
  follow();
  keepWhenCovered(dialog_, NewChildThen::returns);
  dialog_->open();
}

void SettingsDesk::connectDialog() {
  connect(dialog_, &SettingsDialog::textSizeChosen, this, &SettingsDesk::textSizeChosen);
  connect(dialog_, &SettingsDialog::unitsChosen, this, &SettingsDesk::unitsChosen);
  connect(dialog_, &SettingsDialog::coloursChosen, this, [this](Colours colours) {
    settings_.setColours(colours);
    useColours(colours);
  });
  connect(dialog_, &SettingsDialog::rulesChosen, this, [this](RulesKind kind) { rules_.use(kind); });
  connect(dialog_, &SettingsDialog::rulesFileWanted, this, [this] { rules_.openFile(dialog_); });
  connect(dialog_, &SettingsDialog::rulesEditorWanted, this, [this] { rules_.edit(dialog_); });
  connect(dialog_, &SettingsDialog::coverMinutesChosen, this, [this](std::optional<int> minutes) {
    settings_.setCoverMinutes(minutes);
    Q_EMIT coverMinutesChosen(minutes);
  });
  connect(dialog_, &SettingsDialog::paperChosen, this, [this](PaperSize paper) {
    settings_.setPaper(paper);
    Q_EMIT paperChosen(paper);
  });
}

void SettingsDesk::follow() {
  if (dialog_) dialog_->follow(now());
}

SettingsShown SettingsDesk::now() const {
  SettingsShown now;
  now.textSize = settings_.textSize();
  now.colours = settings_.colours();
  now.units = units_;
  now.houseUnits = parts_.rules.unitSystem;
  now.rules = rules_.kind();
  if (rules_.own()) now.ownRules = fromCore(rulesTitle(*rules_.own()));
  now.rulesWords = fromCore(rulesProvenance(parts_.rules));
  now.rulesTrouble = rules_.trouble();
  now.rulesOffered = !parts_.session.isUnderWay();
  now.coverMinutes = settings_.coverMinutes();
  now.houseMinutes = parts_.rules.idleMinutes;
  now.paper = settings_.paper();
  return now;
}

}  // namespace wardchalk::ui
