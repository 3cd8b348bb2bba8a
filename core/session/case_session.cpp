#include "core/session/case_session.h"

#include <algorithm>
#include <utility>

#include "core/check/work_out.h"

namespace wardchalk {

namespace {

/// Whether two may compare by these entries, or begin to.
bool isReadable(const CaseDraft& draft) { return !draft.isEmpty() && !draft.refusedPath(); }

/// Never nothing where the two differ: the verdicts stand in where no figure and no entry can be named.
Disagreement differenceIn(const SecondCheck& check) {
  return disagreementOf(check).value_or(Disagreement{check.firstVerdict, check.secondVerdict});
}

}  // namespace

SessionState CaseSession::stateUnderCover() const {
  if (!underWay_) {
    if (!record_) return SessionState::alone;
    if (!record_->differs) return SessionState::agreed;
    return record_->changedSince ? SessionState::differedBefore : SessionState::differs;
  }
  if (underWay_->comparing)
    return underWay_->apart ? SessionState::comparingApart : SessionState::comparingAlike;
  if (!underWay_->firstLook) return SessionState::secondEnters;
  return underWay_->inForm == Person::first ? SessionState::firstCorrects : SessionState::secondCorrects;
}

SessionState CaseSession::state() const { return isCovered() ? SessionState::covered : stateUnderCover(); }

Answers CaseSession::answers() const {
  Answers answers = questioning_.answers();
  answers.secondAgrees = stateUnderCover() == SessionState::agreed;
  return answers;
}

std::optional<Disagreement> CaseSession::disagreement() const {
  if (underWay_ || !record_ || record_->changedSince) return std::nullopt;
  return record_->differs;
}

bool CaseSession::leavesDifference() const {
  return underWay_ && (underWay_->seenApart || (record_ && !record_->changedSince));
}

bool CaseSession::isUnsettled() const {
  return (underWay_ && underWay_->seenApart) || (record_ && record_->differs);
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
  if (record_ && !record_->differs) record_.reset();
  questioning_.voidAnswers();
  underWay_ = UnderWay{.other = inForm, .firstLook = {}, .seenApart = {}};
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
  if (underWay_->apart) underWay_->seenApart = recordOf(check, inForm, rules);
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

const CaseDraft& CaseSession::firstDraft(const CaseDraft& inForm) const {
  return underWay_ && underWay_->inForm == Person::second ? underWay_->other.draft : inForm;
}

SecondCheckRecord CaseSession::recordOf(const SecondCheck& check, const CaseDraft& inForm,
                                        const HouseRules& rules) const {
  SecondCheckRecord record{
      firstDraft(inForm).entries(), rules, *underWay_->firstLook, apartIn(check), {}, {}};
  if (!check.agree()) record.differs = differenceIn(check);
  return record;
}

void CaseSession::judgeRecord(const CaseDraft& firsts) {
  if (record_ && record_->differs) record_->changedSince = isChangedSince(*record_, firsts);
}

Moved CaseSession::putFirstBack(const Shelved& inForm) {
  judgeRecord(firstDraft(inForm.draft));
  const UnderWay ended = *std::exchange(underWay_, std::nullopt);
  if (ended.inForm == Person::first) return {true, std::nullopt};
  questioning_.voidAnswers();
  return {true, ended.other};
}

Moved CaseSession::record(const Shelved& inForm, const HouseRules& rules, std::string time) {
  if (isCovered() || !isComparing()) return {};
  record_ = recordOf(*comparison(inForm.draft, rules), inForm.draft, rules);
  record_->time = std::move(time);
  return putFirstBack(inForm);
}

Moved CaseSession::leave(const Shelved& inForm, std::string time) {
  if (isCovered() || !isUnderWay()) return {};
  if (underWay_->seenApart) {
    record_ = std::move(underWay_->seenApart);
    record_->time = std::move(time);
  }
  return putFirstBack(inForm);
}

bool CaseSession::changed(const CaseDraft& inForm) {
  if (!record_ || !isUsual()) return false;
  const SessionState before = state();
  if (record_->differs)
    judgeRecord(inForm);
  else if (inForm.entries() != record_->entries)
    record_.reset();
  return state() != before;
}

bool CaseSession::rulesChanged(const HouseRules& rules) {
  if (!record_ || record_->differs) return false;
  HouseRules now = rules;
  now.idleMinutes = record_->rules.idleMinutes;
  if (now == record_->rules) return false;
  record_.reset();
  return true;
}

bool CaseSession::opened(const CaseDraft& before, const CaseDraft& now) {
  if (!isUsual()) return false;
  questioning_.voidAnswers();
  const std::vector<WrittenEntry> entries = now.entries();
  const auto isOf = [&](const SecondCheckRecord& record) {
    return isSameChild(record.entries, entries, record.rules.pounds);
  };
  if (record_ && !record_->differs) record_.reset();
  if (record_ && !isOf(*record_) && !isSameChild(before.entries(), entries, record_->rules.pounds))
    setAside_.push_back(*std::exchange(record_, std::nullopt));
  if (const auto known = std::ranges::find_if(setAside_, isOf); !record_ && known != setAside_.end()) {
    record_ = std::move(*known);
    setAside_.erase(known);
  }
  judgeRecord(now);
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
