#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/answers.h"
#include "core/record/second_check.h"
#include "core/session/questioning.h"
#include "core/session/second_check_record.h"
#include "core/session/shelved.h"

namespace wardchalk {

/// Where the case in the form stands. README.md says for each of them what each event does.
enum class SessionState : std::uint8_t {
  alone,           ///< one person's entries, or none; nothing is recorded of a second check
  agreed,          ///< a second check was recorded, and agrees
  differs,         ///< a second check was recorded, and differs: no amount
  differedBefore,  ///< the same, and an entry that differed was changed since; it was not repeated
  secondEnters,    ///< a second person enters; the first one's entries are put away
  comparingAlike,  ///< both are side by side, and nothing differs
  comparingApart,  ///< both are side by side, and differ
  firstCorrects,   ///< after a comparison the first person's entries are in the form
  secondCorrects,  ///< after a comparison the second person's are
  covered,         ///< everything is hidden, and waits as it was
};

inline constexpr std::array<std::string_view, 10> sessionStateIds = {
    "alone",           "agreed",           "differs",          "differed before",
    "second enters",   "comparing, alike", "comparing, apart", "first corrects",
    "second corrects", "covered"};

[[nodiscard]] constexpr std::string_view idOf(SessionState state) {
  return sessionStateIds[static_cast<std::size_t>(state)];
}

enum class Person : std::uint8_t { first, second };

/// What an event came to. Where it means nothing, it is not taken and nothing has changed.
struct Moved {
  bool taken = false;
  std::optional<Shelved> toForm;  ///< what the form is to hold now; nothing: what it holds

  explicit operator bool() const { return taken; }
};

/// The entries of one or two people who work at one case, the answers to its questions, its cover and what is
/// recorded of a second check. The form holds the entries of one; all others are here. Events come from
/// outside with what the form holds, the house rules in force and the time, since the core has no clock.
class CaseSession {
 public:
  [[nodiscard]] SessionState state() const;
  /// The same, as if there were no cover.
  [[nodiscard]] SessionState stateUnderCover() const;
  [[nodiscard]] bool isCovered() const { return hidden_.has_value(); }
  [[nodiscard]] bool isUnderWay() const { return underWay_.has_value(); }
  [[nodiscard]] bool isComparing() const { return underWay_ && underWay_->comparing; }

  /// The entries of the one of two people who is not at the form; none unless a second check is under way.
  [[nodiscard]] const Shelved* putAway() const { return underWay_ ? &underWay_->other : nullptr; }
  /// What lies under the cover.
  [[nodiscard]] const std::optional<Shelved>& hidden() const { return hidden_; }
  [[nodiscard]] const std::optional<SecondCheckRecord>& record() const { return record_; }
  /// What two people differ in and did not settle. Nothing while a second person works: it would tell of the
  /// first one's entries.
  [[nodiscard]] std::optional<Disagreement> disagreement() const;
  /// How the questions of the worksheet were settled, and whether a second check agrees.
  [[nodiscard]] Answers answers() const;
  /// Whose entries the form holds: the first person's unless a second check is under way.
  [[nodiscard]] Person inForm() const { return underWay_ ? underWay_->inForm : Person::first; }
  /// Whether a difference stands on when the second check is left now.
  [[nodiscard]] bool leavesDifference() const;
  /// Whether two people were seen to differ and nothing has settled it: no file of a case keeps that.
  [[nodiscard]] bool isUnsettled() const;
  /// Whether the second person had entered everything before the first comparison.
  [[nodiscard]] bool wasAlone() const;
  [[nodiscard]] bool hasBeenCompared() const { return underWay_ && underWay_->firstLook; }
  /// Whether anything would be lost that is not saved, in the form or here.
  [[nodiscard]] bool holdsUnsaved(const Shelved& inForm) const;

  /// A second person is to enter: the form is emptied. Not on an empty form, nor while an entry cannot be
  /// read.
  bool begin(const Shelved& inForm);
  /// What the second person still needs before the first comparison, that the first did not need.
  [[nodiscard]] std::vector<Need> stillNeeded(const CaseDraft& inForm, const HouseRules& rules) const;
  /// Lays both side by side. Not while the form is empty or an entry cannot be read.
  bool compare(const CaseDraft& inForm, const HouseRules& rules);
  /// Both side by side; nothing unless a second check is under way.
  [[nodiscard]] std::optional<SecondCheck> comparison(const CaseDraft& inForm, const HouseRules& rules) const;
  Moved correct(Person person, const Shelved& inForm);
  /// Records what is compared; nothing of the second person's entries is kept.
  Moved record(const Shelved& inForm, const HouseRules& rules, std::string time);
  /// Gives the second check up; nothing of the second person's entries is kept. A difference that has been
  /// looked at is recorded, and one that was recorded earlier stands on: only a record that agrees ends it.
  Moved leave(const Shelved& inForm, std::string time);

  /// The form's entries may be others. True when the state is another by it: a record that agrees is void;
  /// one that differs stands while the entries that differed have their values.
  bool changed(const CaseDraft& inForm);
  /// These house rules are in force now. True when a record that agrees is void by it; one that differs
  /// stands. After how many minutes entries are covered changes no figure, and voids nothing.
  bool rulesChanged(const HouseRules& rules);
  /// Another case has taken the place of the one in the form. Not while there is more than that one. A record
  /// that agrees goes; a difference is set aside, and comes back with a case of the same child.
  bool opened(const CaseDraft& before, const CaseDraft& now);
  /// A new child: nothing of anybody's entries is kept.
  void forget();

  bool cover(const Shelved& inForm);
  Moved uncover();

  /// This worksheet was worked out from the form.
  void worked(const Worksheet& sheet) { questioning_.follow(sheet); }
  /// How a question was settled, or that it is open again. False when it is not asked now, or not settled so.
  bool answer(FindingCode question, std::optional<Answer> how);

 private:
  struct UnderWay {
    Shelved other;  ///< of the person whose entries are not in the form
    Person inForm = Person::second;
    bool comparing = false;
    bool apart = false;  ///< by the last comparison
    std::optional<FirstLook> firstLook;
    std::optional<SecondCheckRecord> seenApart;  ///< the last comparison that showed a difference
  };
  [[nodiscard]] bool isUsual() const { return !isCovered() && !isUnderWay(); }
  [[nodiscard]] const CaseDraft& firstDraft(const CaseDraft& inForm) const;
  [[nodiscard]] SecondCheckRecord recordOf(const SecondCheck& check, const CaseDraft& inForm,
                                           const HouseRules& rules) const;
  void judgeRecord(const CaseDraft& firsts);
  [[nodiscard]] Moved putFirstBack(const Shelved& inForm);

  std::optional<UnderWay> underWay_;
  std::optional<Shelved> hidden_;
  std::optional<SecondCheckRecord> record_;
  std::vector<SecondCheckRecord> setAside_;  ///< differences about cases that others have taken the place of
  Questioning questioning_;
};

}  // namespace wardchalk
