#pragma once

#include <QDialog>
#include <optional>
#include <string>
#include <vector>

#include "core/rules/unit_system.h"
#include "ui/paper/paper_format.h"
#include "ui/shell/rules_desk.h"
#include "ui/theme/colours.h"

class QVBoxLayout;

namespace wardchalk::ui {

class ChoiceBox;
class RowsPage;
class RuleRow;

/// What the settings are now, and what can be said of them.
struct SettingsShown {
  int textSize = 100;
  Colours colours = Colours::desktop;
  UnitSystem units = UnitSystem::none;
  std::optional<UnitSystem> houseUnits;  ///< what the house rules say of a bare number
  RulesKind rules = RulesKind::exact;
  QString ownRules;      ///< what a set is called that is none of the shipped; empty: there is none
  QString rulesWords;    ///< who agreed the set
  QString rulesTrouble;  ///< why the file of a set cannot be read; in place of these words
  bool rulesOffered = true;
  std::optional<int> coverMinutes;
  int houseMinutes = 0;
  PaperSize paper = PaperSize::a4;
};

/// Every setting in one place, in words. Each choice counts at once, and nothing is to be confirmed; the
/// dialog itself keeps nothing.
class SettingsDialog : public QDialog {
  Q_OBJECT

 public:
  explicit SettingsDialog(QWidget* parent);

  void follow(const SettingsShown& now);

 Q_SIGNALS:
  void textSizeChosen(int percent);
  void coloursChosen(wardchalk::ui::Colours colours);
  void unitsChosen(wardchalk::UnitSystem units);
  void rulesChosen(wardchalk::ui::RulesKind rules);
  void rulesFileWanted();
  void rulesEditorWanted();
  void coverMinutesChosen(std::optional<int> minutes);
  void paperChosen(wardchalk::ui::PaperSize paper);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fit();
  RuleRow* addRow(const char* name, const QString& label, void (SettingsDialog::*chosen)(const QString&));
  void addRulesButtons();
  void addClose(QVBoxLayout* column);

  void chooseTextSize(const QString& id);
  void chooseColours(const QString& id);
  void chooseUnits(const QString& id);
  void chooseRules(const QString& id);
  void chooseCover(const QString& id);
  void choosePaper(const QString& id);

  QSize fitted_;  ///< what it was given for its letters
  RowsPage* page_;
  RuleRow* textSize_;
  RuleRow* colours_;
  RuleRow* units_;
  RuleRow* rules_;
  QWidget* rulesButtons_;
  RuleRow* cover_;
  RuleRow* paper_;
};

}  // namespace wardchalk::ui
