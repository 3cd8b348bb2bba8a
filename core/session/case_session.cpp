#include "core/session/case_session.h"

#include <utility>

#include "core/check/work_out.h"

namespace wardchalk {

namespace {

/// Whether two may compare by these entries, or begin to.
bool isReadable(const CaseDraft& draft) { return !draft.isEmpty() && !draft.refusedPath(); }

}  // namespace

SessionState CaseSession::stateUnderCover() const {
  if (!underWay_) {
    if (!record_) return SessionState::alone;
    return record_->differs ? SessionState::differs : SessionState::agreed;
  }
  if (underWay_->comparing)
    return underWay_->apart ? SessionState::comparingApart : SessionState::comparingAlike;
  if (!underWay_->firstLook) return SessionState::secondEnters;
  return underWay_->inForm == Person::first ? SessionState::firstCorrects : SessionState::secondCorrects;
}

SessionState CaseSession::state() const { return isCovered() ? SessionState::covered : stateUnderCover(); }

std::optional<Disagreement> CaseSession::disagreement() const {
  return record_ ? record_->differs : std::nullopt;
}

bool CaseSession::wasAlone() const {
  return underWay_ && underWay_->firstLook && underWay_->firstLook->alone;
}

bool CaseSession::holdsUnsaved(const Shelved& inForm) const {
  const auto isUnsaved = [](const Shelved& entries) { return entries.modified && !entries.draft.isEmpty(); };
  if (isUnsaved(inForm) || (hidden_ && isUnsaved(*hidden_))) return true;
  return isUnderWay() && (underWay_->other.modified || inForm.modified || isCovered());
}

bool CaseSession::begin(const Shelved& inForm) {
  if (!isUsual() || !isReadable(inForm.draft)) return false;
  record_.reset();
  questioning_.voidAnswers();
  underWay_ = UnderWay{.other = inForm, .firstLook = {}};
  return true;
}

std::vector<Need> CaseSession::stillNeeded(const CaseDraft& inForm, const HouseRules& rules) const {
  if (!underWay_ || underWay_->firstLook) return {};
  const Worksheet first = workOut(underWay_->other.draft.toCase(), rules);
  return needsBeyond(first, workOut(inForm.toCase(), rules));
}

std::optional<SecondCheck> CaseSession::comparison(const CaseDraft& inForm, const HouseRules& rules) const {
  if (!underWay_) return std::nullopt;
  const bool firstHere = underWay_->inForm == Person::first;
  const CaseDraft& first = firstHere ? inForm : underWay_->other.draft;
  const CaseDraft& second = firstHere ? underWay_->other.draft : inForm;
  const Worksheet one = workOut(first.toCase(), rules);
  const Worksheet two = workOut(second.toCase(), rules);
  const std::vector<WrittenEntry> oneEntries = first.entries();
  const std::vector<WrittenEntry> twoEntries = second.entries();
  return compareChecks({oneEntries, one}, {twoEntries, two});
}

bool CaseSession::compare(const CaseDraft& inForm, const HouseRules& rules) {
  if (isCovered() || !isUnderWay() || isComparing() || !isReadable(inForm)) return false;
  const SecondCheck check = *comparison(inForm, rules);
  if (!underWay_->firstLook)
    underWay_->firstLook = FirstLook{apartIn(check), stillNeeded(inForm, rules).empty()};
  underWay_->apart = !check.agree();
  underWay_->comparing = true;
  return true;
}

Moved CaseSession::correct(Person person, const Shelved& inForm) {
  if (isCovered() || !isComparing()) return {};
  underWay_->comparing = false;
  if (underWay_->inForm == person) return {true, std::nullopt};
  underWay_->inForm = person;
  questioning_.voidAnswers();
  return {true, std::exchange(underWay_->other, inForm)};
}

Moved CaseSession::putFirstBack() {
  const UnderWay ended = *std::exchange(underWay_, std::nullopt);
  if (ended.inForm == Person::first) return {true, std::nullopt};
  questioning_.voidAnswers();
  return {true, ended.other};
}

Moved CaseSession::record(const Shelved& inForm, const HouseRules& rules, std::string time) {
  if (isCovered() || !isComparing()) return {};
  const SecondCheck check = *comparison(inForm.draft, rules);
  const bool firstHere = underWay_->inForm == Person::first;
  const CaseDraft& first = firstHere ? inForm.draft : underWay_->other.draft;
  record_ = SecondCheckRecord{first.entries(),       rules,          *underWay_->firstLook, apartIn(check),
                              disagreementOf(check), std::move(time)};
  return putFirstBack();
}

Moved CaseSession::leave() {
  if (isCovered() || !isUnderWay()) return {};
  return putFirstBack();
}

bool CaseSession::changed(const CaseDraft& inForm) {
  if (!record_ || !isUsual() || inForm.entries() == record_->entries) return false;
  record_.reset();
  return true;
}

bool CaseSession::rulesChanged(const HouseRules& rules) {
  if (!record_) return false;
  HouseRules now = rules;
  now.idleMinutes = record_->rules.idleMinutes;
  if (now == record_->rules) return false;
  record_.reset();
  return true;
}

bool CaseSession::opened() {
  if (!isUsual()) return false;
  record_.reset();
  questioning_.voidAnswers();
  return true;
}

void CaseSession::forget() { *this = {}; }

bool CaseSession::cover(const Shelved& inForm) {
  if (isCovered()) return false;
  hidden_ = inForm;
  questioning_.voidAnswers();
  return true;
}

Moved CaseSession::uncover() {
  if (!isCovered()) return {};
  return {true, std::exchange(hidden_, std::nullopt)};
}

bool CaseSession::answer(FindingCode question, std::optional<Answer> how) {
  return !isCovered() && !isComparing() && questioning_.answer(question, how);
}

}  // namespace wardchalk
