#pragma once

#include <QObject>
#include <QPointer>
#include <optional>

#include "ui/form/case_editor.h"
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

  /// Looks again whether there is anything to hide: a case in the form, or more that is held elsewhere.
  void follow(bool moreIsHeld);
  void followRules();

  [[nodiscard]] bool isCovered() const { return hidden_.has_value(); }
  /// Whether entries that are not saved lie under the cover.
  [[nodiscard]] bool hidesUnsaved() const {
    return hidden_ && hidden_->modified && !hidden_->draft.isEmpty();
  }
  /// Brings back what was covered.
  void uncover();
  /// Takes the cover away and forgets what lay under it.
  void forget();

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

  WindowParts parts_;
  IdleWatch* watch_;
  NoticeBar* notice_;
  QPointer<NoticeBar> elsewhere_;  // the same warning on a board or a dialog that lies over the window
  CoverPage* page_;
  QPointer<QWidget> before_;  // the page that was covered
  std::optional<Shelved> hidden_;
  WindowsAway away_;
};

}  // namespace wardchalk::ui
