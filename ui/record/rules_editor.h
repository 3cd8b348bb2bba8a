#pragma once

#include <QDialog>
#include <QHash>

#include "core/rules/house_rules.h"

class QLabel;
class QVBoxLayout;

namespace wardchalk::ui {

class QuietLine;
class RowsPage;
class RuleRow;
class SyringeTable;
struct RuleSpec;

/// The house rules in plain words, each with an example that the core works out as it is changed. Nothing is
/// in force before it is asked for.
class RulesEditor : public QDialog {
  Q_OBJECT

 public:
  RulesEditor(HouseRules rules, QWidget* parent);

  [[nodiscard]] const HouseRules& rules() const { return rules_; }

 Q_SIGNALS:
  /// Every rule can be read: to be saved as a file and used, or used until the window is closed.
  void saveWanted(const wardchalk::HouseRules& rules);
  void useWanted(const wardchalk::HouseRules& rules);

 private:
  void build();
  void addRows();
  void addRule(QVBoxLayout* column, const RuleSpec& spec);
  QWidget* makeBox(const RuleSpec& spec);
  void addSyringes(QVBoxLayout* column);
  void take(const RuleSpec& spec, const QString& text);
  void takeSyringes();
  void showExamples();
  bool isWhole();
  void goTo(QWidget* box);
  void sayRefused(const QString& label, const QString& why);

  HouseRules rules_;
  QHash<QString, RuleRow*> fields_;
  QHash<QString, QString> refused_;  // key to the sentence that says why
  SyringeTable* syringes_ = nullptr;
  QuietLine* syringeLine_ = nullptr;
  RowsPage* page_ = nullptr;
  QLabel* notSaved_ = nullptr;
};

}  // namespace wardchalk::ui
