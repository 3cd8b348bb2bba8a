#pragma once

#include <QObject>
#include <QString>
#include <optional>
#include <vector>

#include "core/record/second_check.h"
#include "core/rules/house_rules.h"
#include "core/words/phrasebook.h"
#include "ui/form/case_editor.h"
#include "ui/shell/other_windows.h"
#include "ui/shell/window_parts.h"

namespace wardchalk::ui {

class NoticeBar;
class SecondCheckView;

/// The independent second check: the first person's entries leave the form, the second person fills it in
/// alone, and then both are laid side by side. What is recorded stands on the sheet until anything of the
/// case is changed.
class SecondCheckDesk : public QObject {
  Q_OBJECT

 public:
  explicit SecondCheckDesk(const WindowParts& parts);

  void begin();
  /// Lays both side by side; until every entry can be read it leads to the one that cannot.
  void compare();
  /// Gives the second entries up, once that is confirmed, and puts the first back; nothing is recorded.
  void askToLeave();
  void leave();
  /// Forgets both people's entries and what was recorded: a new child.
  void forget();
  /// Looks whether a record was made by house rules that reckon otherwise; then it is void.
  void followRules();
  /// What the two recorded as different and did not settle; nothing when they agree or nothing is recorded.
  [[nodiscard]] std::optional<Disagreement> disagreement() const {
    return record_ ? record_->apart : std::nullopt;
  }

  [[nodiscard]] bool isUnderWay() const { return inForm_ != Person::none; }
  [[nodiscard]] bool isComparing() const { return comparing_; }
  /// Whether the first person's entries are put away and are not saved.
  [[nodiscard]] bool holdsUnsaved() const;
  /// "Second check: done independently, same result (2026-11-25 13:40)."; "… not done" without a record.
  [[nodiscard]] QString words() const;
  [[nodiscard]] bool isRecorded() const { return record_.has_value(); }

  /// Takes the comparison off the screen, and draws it again.
  void cover();
  void uncover();
  void setZoom(int percent);

 Q_SIGNALS:
  void changed();                         ///< begun, compared, left, recorded or void
  void begun();                           ///< the form is the second person's, from its top
  void fieldWanted(const QString& path);  ///< an entry that cannot be read

 private:
  enum class Person : std::uint8_t { none, first, second };
  struct Record {
    std::vector<WrittenEntry> entries;
    HouseRules rules;
    QString words;
    std::optional<Disagreement> apart;
  };
  /// What the first comparison showed; a later one, after looking at the papers together, is another thing.
  struct FirstLook {
    QString apart;  // what was not the same; empty when nothing was
    bool complete;  // whether the second person was through before seeing the first one's entries
  };

  void makeView();
  void dropView();
  void follow();
  void swap();
  void correct(Person person);
  void finish();
  void putFirstBack();
  void showPage(QWidget* page);
  void sayWhoseTurn();
  [[nodiscard]] std::optional<SecondCheck> comparison() const;
  [[nodiscard]] bool mayCompare();
  [[nodiscard]] std::vector<Need> stillNeeded() const;
  [[nodiscard]] bool comparesUnfinished(const std::vector<Need>& needs);
  void showComparison();
  void voidRecord(PhraseId what);
  [[nodiscard]] std::string doneWords(const SecondCheck& check) const;
  [[nodiscard]] QString recordWords(const SecondCheck& check) const;

  WindowParts parts_;
  NoticeBar* notice_;
  NoticeBar* voided_;
  SecondCheckView* view_ = nullptr;  // only while a second check is under way
  Person inForm_ = Person::none;
  Shelved other_;  // of the person whose entries are not in the form
  int zoom_ = 100;
  bool comparing_ = false;
  bool corrected_ = false;
  std::optional<FirstLook> firstLook_;
  bool covered_ = false;
  WindowsAway away_;
  std::optional<Record> record_;
};

}  // namespace wardchalk::ui
