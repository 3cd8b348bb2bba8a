#pragma once

#include <QObject>
#include <QString>
#include <vector>

#include "core/session/case_session.h"
#include "core/words/phrasebook.h"
#include "ui/shell/other_windows.h"
#include "ui/shell/window_parts.h"

namespace wardchalk::ui {

class NoticeBar;
class SecondCheckView;

/// The independent second check: the first person's entries leave the form, the second person fills it in
/// alone, and then both are laid side by side. What is recorded stands on the sheet as long as CaseSession
/// says.
class SecondCheckDesk : public QObject {
  Q_OBJECT

 public:
  explicit SecondCheckDesk(const WindowParts& parts);

  void begin();
  /// Lays both side by side; until every entry can be read it leads to the one that cannot.
  void compare();
  /// Gives the second entries up, once that is confirmed, and puts the first back; only a difference that was
  /// looked at is recorded.
  void askToLeave();
  void leave();
  /// Takes everything of a second check off the screen: another case, or a new child.
  void reset();
  /// Other house rules are in force: says so when a record is void by it.
  void followRules();

  /// Takes the comparison off the screen, and draws it again.
  void cover();
  void uncover();

 Q_SIGNALS:
  void changed();                         ///< begun, compared, left, recorded or void
  void begun();                           ///< the form is the second person's, from its top
  void ended();                           ///< the first person's entries are in the form again
  void fieldWanted(const QString& path);  ///< an entry that cannot be read

 private:
  void makeView();
  void dropView();
  void follow();
  [[nodiscard]] QString firstApart() const;
  void correct(Person person);
  void finish();
  void end(Moved moved);
  void showPage(QWidget* page);
  void sayWhoseTurn();
  [[nodiscard]] bool mayCompare();
  [[nodiscard]] bool comparesUnfinished(const std::vector<Need>& needs);
  void showComparison();
  void sayVoid(PhraseId what);

  WindowParts parts_;
  NoticeBar* notice_;
  NoticeBar* voided_;
  SecondCheckView* view_ = nullptr;  // only while a second check is under way
  WindowsAway away_;
};

}  // namespace wardchalk::ui
