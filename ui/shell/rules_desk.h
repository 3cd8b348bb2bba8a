#pragma once

#include <QObject>

#include "core/number/refusal.h"
#include "core/rules/house_rules.h"
#include "ui/shell/window_parts.h"

namespace wardchalk::ui {

class NoticeBar;
class Settings;

/// Which house rules are in force: one of the two shipped sets, a file, or what the editor made. The choice
/// is remembered, and never a rule of its own.
class RulesDesk : public QObject {
  Q_OBJECT

 public:
  /// `rules` are the window's; they change in place.
  RulesDesk(const WindowParts& parts, HouseRules& rules, Settings& settings);

  /// Takes the set that was chosen last. One that cannot be read is told in the window and forgotten, and
  /// the exact set serves.
  void start();
  void useExact();
  void useClassroom();
  void openFile();
  void edit();

 Q_SIGNALS:
  void changed();

 private:
  void use(const HouseRules& rules);
  bool save(const HouseRules& rules);
  [[nodiscard]] Result<HouseRules> readFile(const QString& file) const;
  [[nodiscard]] QString whyNot(const QString& file, const Refusal& refusal) const;

  WindowParts parts_;
  HouseRules& rules_;
  Settings& settings_;
  NoticeBar* notice_;
};

}  // namespace wardchalk::ui
