#include "core/words/given_words.h"

#include <array>

#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/fact_words.h"
#include "core/words/phrasebook.h"
#include "core/words/read_back.h"

namespace wardchalk {

namespace {

constexpr std::array routeAdverbs = {PhraseId::byRoute_oral,         PhraseId::byRoute_enteral,
                                     PhraseId::byRoute_intravenous,  PhraseId::byRoute_intramuscular,
                                     PhraseId::byRoute_subcutaneous, PhraseId::byRoute_rectal,
                                     PhraseId::byRoute_inhaled,      PhraseId::byRoute_topical};

PhraseId everyPhrase(Unit unit) {
  if (unit == Unit::week) return PhraseId::often_everyWeeks;
  return unit == Unit::day ? PhraseId::often_everyDays : PhraseId::often_everyHours;
}

std::string everyWords(const Schedule& schedule) {
  const Number hours(schedule.in == Unit::week ? 168 : schedule.in == Unit::day ? 24 : 1);
  const auto interval = [&](const Number& doses) { return Number(24) / (doses * hours); };
  const Number longest = interval(schedule.fewest);
  const bool range = schedule.fewest != schedule.most;
  return say(
      everyPhrase(schedule.in),
      {{"low", range ? exactText(interval(schedule.most)) : std::string()}, {"high", exactText(longest)}},
      longest == Number(1) && !range ? 1 : 2);
}

bool isSingleDose(const DoseAmount& dose) {
  return dose.perSize == PerSize::none && (dose.perTime == PerTime::none || dose.perTime == PerTime::dose);
}

std::string doseWords(const DoseAmount& dose) {
  if (isSingleDose(dose)) return enteredWords(dose.amount);
  return dose.isRate() ? printed(dose) : enteredWords(dose.amount).append(" ").append(basisWords(dose));
}

}  // namespace

std::string scheduleWords(const Schedule& schedule) {
  if (schedule.isContinuous()) return say(PhraseId::often_continuous);
  return schedule.byInterval ? everyWords(schedule) : schedule.text;
}

std::string givenWords(const std::optional<Route>& route, const std::optional<Schedule>& schedule) {
  if (route == Route::intravenous && schedule && schedule->isContinuous())
    return say(PhraseId::often_continuousInfusion);
  std::string text = route ? say(routeAdverbs[static_cast<std::size_t>(*route)]) : std::string();
  if (schedule) text.append(text.empty() ? "" : " ").append(scheduleWords(*schedule));
  return text;
}

std::string orderWords(const Order& order) {
  std::string how = givenWords(order.route, order.schedule);
  if (!order.dose) return how;
  std::string text = doseWords(*order.dose);
  if (how.empty()) return text;
  // What is not the amount of one dose stands apart from how often: "750 mg per day, by mouth every 8 hours".
  const bool joins = isSingleDose(*order.dose) || order.dose->isRate();
  return text.append(joins ? " " : ", ").append(how);
}

}  // namespace wardchalk
