#pragma once

#include <QObject>
#include <QString>
#include <optional>

#include "core/number/refusal.h"
#include "core/rules/house_rules.h"
#include "ui/shell/window_parts.h"

namespace wardchalk::ui {

class NoticeBar;
class Settings;

/// One of the two sets that are shipped, or any other.
enum class RulesKind : std::uint8_t { exact, classroom, own };

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
  /// One that is none of the shipped sets must have been used before.
  void use(RulesKind kind);
  /// Both ask above this window, or above the main one.
  void openFile(QWidget* above = nullptr);
  void edit(QWidget* above = nullptr);

  [[nodiscard]] RulesKind kind() const;
  /// The set used last that is none of the shipped ones.
  [[nodiscard]] const std::optional<HouseRules>& own() const { return own_; }
  /// Why the file that the rules in force were read from, or ought to have been, cannot be read; empty when
  /// nothing is the matter.
  [[nodiscard]] QString trouble() const;

 Q_SIGNALS:
  void changed();

 private:
  void use(const HouseRules& rules, const QString& file = {});
  bool save(const HouseRules& rules);
  [[nodiscard]] Result<HouseRules> readFile(const QString& file) const;
  [[nodiscard]] QWidget* over(QWidget* above) const { return above ? above : parts_.window; }

  WindowParts parts_;
  HouseRules& rules_;
  Settings& settings_;
  NoticeBar* notice_;
  std::optional<HouseRules> own_;
  QString ownFile_;  // that it was read from; empty: it was not
  QString lost_;     // what was said at the start of a file that could not be read
};

}  // namespace wardchalk::ui
