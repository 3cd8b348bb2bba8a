#pragma once

#include <QObject>
#include <QPointer>
#include <optional>

#include "core/rules/unit_system.h"
#include "ui/paper/paper_format.h"
#include "ui/shell/window_parts.h"

namespace wardchalk::ui {

class RulesDesk;
class Settings;
class SettingsDialog;
struct SettingsShown;

/// Where every setting stands in one place. What is chosen counts at once, in every window that is open.
class SettingsDesk : public QObject {
  Q_OBJECT

 public:
  /// `units` are what the user chose for this child; the window's, and they change in place.
  SettingsDesk(const WindowParts& parts, Settings& settings, RulesDesk& rules, const UnitSystem& units);

  void open();
  /// Shows again what is chosen, after it was changed elsewhere.
  void follow();

 Q_SIGNALS:
  void textSizeChosen(int percent);
  void unitsChosen(wardchalk::UnitSystem units);
  void coverMinutesChosen(std::optional<int> minutes);
  void paperChosen(wardchalk::ui::PaperSize paper);

 private:
  void connectDialog();
  [[nodiscard]] SettingsShown now() const;

  WindowParts parts_;
  Settings& settings_;
  RulesDesk& rules_;
  const UnitSystem& units_;
  QPointer<SettingsDialog> dialog_;
};

}  // namespace wardchalk::ui
