#pragma once

#include <QObject>
#include <QPointer>
#include <optional>

#include "ui/shell/other_windows.h"
#include "ui/shell/window_parts.h"

namespace wardchalk::ui {

class CoverPage;
class IdleWatch;
class NoticeBar;

/// Hides a case that nobody has touched for the house's minutes: every entry leaves the form, and with it
/// flag, amount and working, until the nurse has seen the facts and said that it is still the same child.
class IdleDesk : public QObject {
  Q_OBJECT

 public:
  explicit IdleDesk(const WindowParts& parts);

  /// Looks again whether there is anything to hide: a case in the form, or more that is put away.
  void follow();
  void followRules();
  /// The user's own minutes count where they are fewer than the house's.
  void coverAfter(std::optional<int> minutes);

  /// Brings back what was covered.
  void uncover();
  /// Takes the cover off the screen: nothing lies under it any more.
  void reset();

 Q_SIGNALS:
  /// Before entries leave the form, and after: whoever shows anything of the case takes it away.
  void covering();
  void covered();
  void uncovered();
  void newChildWanted();

 private:
  void warn(int seconds);
  void keep();
  void cover();
  void showFacts();
  void leavePage();
  [[nodiscard]] int minutes() const;

  WindowParts parts_;
  IdleWatch* watch_;
  NoticeBar* notice_;
  QPointer<NoticeBar> elsewhere_;  // the same warning on a board or a dialog that lies over the window
  CoverPage* page_;
  QPointer<QWidget> before_;  // the page that was covered
  WindowsAway away_;
  std::optional<int> own_;  // minutes
};

}  // namespace wardchalk::ui
