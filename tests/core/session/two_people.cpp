#include "tests/core/session/two_people.h"

#include <algorithm>

namespace wardchalk::test {

namespace {

std::vector<WrittenEntry> usual() {
  return {{"child.height", "103 cm"},
          {"child.weight", "17.2 kg"},
          {"order.medicine", "Plover"},
          {"order.dose", "60 mg/dose"},
          {"order.route", "oral"},
          {"order.schedule", "every 12 h"},
          {"reference.low", "100 mg/m2/dose"},
          {"reference.high", "120 mg/m2/dose"},
          {"reference.schedule", "every 12 h"},
          {"reference.source", "Bench list, p. 4"},
          {"stock.kind", "liquid"},
          {"stock.strength", "25 mg/1 mL"}};
}

std::string& textAt(std::vector<WrittenEntry>& entries, std::string_view path) {
  return std::ranges::find(entries, path, &WrittenEntry::path)->text;
}

void append(std::string& text, const CaseDraft& draft) {
  for (const WrittenEntry& entry : draft.entries())
    text.append(entry.path).append("=").append(entry.text + "; ");
}

}  // namespace

TwoPeople::TwoPeople(std::string_view dose, std::string_view high) : papers_(usual()) {
  textAt(papers_, "order.dose") = dose;
  textAt(papers_, "reference.high") = high;
  enter("17.2 kg");
}

void TwoPeople::enter(std::string_view weight) {
  textAt(papers_, "child.weight") = weight;
  form.draft.open(papers_);
  follow();
}

void TwoPeople::edit(std::string_view path, std::string_view text) {
  form.draft.set(path, text);
  form.draft.commit(path);
  follow();
}

Worksheet TwoPeople::worked() const {
  Worksheet sheet = workOut(form.draft.toCase(), rules, form.draft.pendingPath());
  const auto apart = session.disagreement();
  return apart && !form.draft.isEmpty() ? unsettled(std::move(sheet), *apart) : sheet;
}

void TwoPeople::follow() {
  session.changed(form.draft);
  session.worked(worked());
}

void TwoPeople::empty() {
  form = {};
  follow();
}

bool TwoPeople::take(Moved moved) {
  if (moved.toForm) form = std::move(*moved.toForm);
  follow();
  return moved.taken;
}

/// The one who is not at the form has the other weight.
bool TwoPeople::compare(std::string_view weight) {
  if (!session.isUnderWay() || !isFormSeen()) return session.compare(form.draft, rules);
  enter(weight);
  return session.compare(form.draft, rules);
}

bool TwoPeople::open(std::string_view weight) {
  if (session.isCovered() || session.isUnderWay()) return session.opened(form.draft, form.draft);
  const CaseDraft before = form.draft;
  enter(weight);
  const bool taken = session.opened(before, form.draft);
  session.worked(worked());
  return taken;
}

bool TwoPeople::send(Event event) {
  switch (event) {
    case Event::begin:
      if (!session.begin(form)) return false;
      empty();
      return true;
    case Event::compareAlike:
    case Event::compareApart: {
      // who corrects the first entries finds the second person's, as these stand after a difference
      const bool atFirst = session.state() == SessionState::firstCorrects;
      return compare((event == Event::compareAlike) == atFirst ? "12.7 kg" : "17.2 kg");
    }
    case Event::firstCorrects:
      return take(session.correct(Person::first, form));
    case Event::secondCorrects:
      return take(session.correct(Person::second, form));
    case Event::record:
      return take(session.record(form, rules, "2026-11-25 13:40"));
    case Event::leave:
      return take(session.leave(form, "2026-11-25 14:05"));
    case Event::apartEntryChanged:
    case Event::otherEntryChanged:
      if (!isFormSeen()) {
        CaseDraft other = form.draft;
        other.set("child.age", "4 years");
        return session.changed(other);
      }
      if (event == Event::apartEntryChanged)
        edit("child.weight", "16.9 kg");
      else
        edit("child.sex", "female");
      return true;
    case Event::rulesChanged:
      rules = classroomRules();
      session.rulesChanged(rules);
      session.worked(worked());
      return true;
    case Event::otherOpened:
      return open("20 kg");
    case Event::newChild:
      session.forget();
      empty();
      return true;
    case Event::cover:
      if (!session.cover(form)) return false;
      empty();
      return true;
    case Event::uncover:
      return take(session.uncover());
    case Event::answer:
      if (session.isUnderWay() && isFormSeen()) enter("17.2 kg");
      return session.answer(FindingCode::belowLow, Answer::pharmacist);
  }
  return false;
}

void TwoPeople::reach(SessionState state) {
  using enum SessionState;
  if (state == alone) return;
  if (state == covered) {
    send(Event::cover);
    return;
  }
  send(Event::begin);
  if (state == secondEnters) return;
  send(state == agreed || state == comparingAlike ? Event::compareAlike : Event::compareApart);
  if (state == agreed || state == differs || state == differedBefore) send(Event::record);
  if (state == differedBefore) edit("child.weight", "17.3 kg");
  if (state == firstCorrects) send(Event::firstCorrects);
  if (state == secondCorrects) send(Event::secondCorrects);
}

std::string TwoPeople::allEntries() const {
  std::string text;
  append(text, form.draft);
  if (session.hidden()) append(text, session.hidden()->draft);
  if (const Shelved* away = session.putAway()) append(text, away->draft);
  return text;
}

}  // namespace wardchalk::test
