#include "core/practice/sessions/session_tally.h"

#include <algorithm>

#include "core/record/csv.h"

namespace wardchalk {

namespace {

void count(LineTally& tally, const PracticeLine& line) {
  ++tally.lines;
  if (line.marked && line.marked->mark.mark == Mark::unread) ++tally.unread;
  if (line.marked && line.marked->mark.mark == Mark::blank) ++tally.blank;
  if (!line.isRight()) return;
  ++tally.inTheEnd;
  if (line.tries == 1 && line.rung == 0) ++tally.atOnce;
}

LineTally& tallyFor(SessionTally& tally, Topic topic) {
  for (TopicTally& known : tally.topics)
    if (known.topic == topic) return known.lines;
  return tally.topics.emplace_back(TopicTally{topic, {}}).lines;
}

void countMistakes(SessionTally& tally, const PracticeLine& line) {
  for (const MistakeId mistake : line.met) {
    const auto known = std::ranges::find(tally.mistakes, mistake, &MistakeTally::mistake);
    if (known == tally.mistakes.end())
      tally.mistakes.push_back({mistake, 1});
    else
      ++known->lines;
  }
}

void countProblem(SessionTally& tally, const PracticeProblem& problem) {
  if (problem.skipped) ++tally.skipped;
  if (!problem.handedIn) return;
  ++tally.handedIn;
  LineTally& topic = tallyFor(tally, problem.problem.topic);
  for (const PracticeLine& line : problem.lines) {
    count(tally.lines, line);
    count(topic, line);
    countMistakes(tally, line);
  }
}

/// Every line of the topic was right at once.
bool isMastered(const SessionTally& tally, Topic topic) {
  const auto known = std::ranges::find(tally.topics, topic, &TopicTally::topic);
  return known != tally.topics.end() && known->lines.atOnce == known->lines.lines;
}

/// How many lines speak for a topic: those of it that were not right at once, and the mistakes that it
/// exercises.
int weightOf(const SessionTally& tally, Topic topic) {
  int weight = 0;
  const auto worked = std::ranges::find(tally.topics, topic, &TopicTally::topic);
  if (worked != tally.topics.end()) weight += worked->lines.lines - worked->lines.atOnce;
  for (const MistakeTally& mistake : tally.mistakes)
    if (topicFor(infoOf(mistake.mistake).spot) == topic) weight += mistake.lines;
  return weight;
}

/// What to train next.
std::optional<Topic> nextOf(const SessionTally& tally) {
  std::optional<Topic> next;
  int most = 0;
  for (std::size_t i = 0; i < topicIds.size(); ++i) {
    const auto topic = static_cast<Topic>(i);
    const int weight = isMastered(tally, topic) ? 0 : weightOf(tally, topic);
    if (weight <= most) continue;
    most = weight;
    next = topic;
  }
  return next;
}

std::string slipsOf(const PracticeLine& line) {
  std::string slips;
  for (const MistakeId mistake : line.met) slips.append(slips.empty() ? "" : " ").append(idOf(mistake));
  return slips;
}

/// What is the same in every row.
struct TableHead {
  std::string set, date, mode, seat;
};

void addRows(std::string& table, const TableHead& head, const PracticeProblem& problem, std::size_t number) {
  for (std::size_t i = 0; i < problem.lines.size(); ++i) {
    const PracticeLine& line = problem.lines[i];
    appendCsvRow(
        table,
        {head.set, head.date, head.mode, head.seat, std::to_string(number),
         std::to_string(problem.problem.seed), std::string(idOf(problem.problem.topic)),
         std::to_string(problem.problem.level), std::string(idOf(problem.problem.asks[i])), line.text,
         problem.skipped || !line.marked ? "skipped" : std::string(idOf(line.marked->mark.mark)),
         slipsOf(line), std::to_string(line.tries), std::to_string(line.rung), std::to_string(line.seconds)});
  }
}

}  // namespace

SessionTally tallyOf(const PracticeSession& session) {
  SessionTally tally;
  for (std::size_t i = 0; i < session.count(); ++i)
    if (session.isMade(i)) countProblem(tally, session.at(i));
  std::ranges::stable_sort(tally.mistakes, [](const MistakeTally& a, const MistakeTally& b) {
    return a.lines != b.lines ? a.lines > b.lines : a.mistake < b.mistake;
  });
  tally.next = nextOf(tally);
  return tally;
}

std::optional<Topic> topicFor(Spot spot) {
  switch (spot) {
    case Spot::weight:
    case Spot::conversion:
    case Spot::unit:
      return Topic::conversion;
    case Spot::height:
    case Spot::surface:
      return Topic::bsa;
    case Spot::basis:
      return Topic::doseByBsa;
    case Spot::schedule:
      return Topic::dailyDivided;
    case Spot::reference:
    case Spot::comparison:
      return Topic::safeRange;
    case Spot::label:
    case Spot::syringe:
      return Topic::amountLiquid;
    case Spot::mixing:
      return Topic::reconstitution;
    case Spot::time:
      return Topic::infusion;
    case Spot::volume:
      return Topic::dilution;
    case Spot::drops:
      return Topic::drops;
    case Spot::order:
    case Spot::point:
    case Spot::rounding:
    case Spot::sum:
    case Spot::writing:
      break;
  }
  return std::nullopt;
}

const std::vector<std::string>& resultColumns() {
  static const std::vector<std::string> columns = {"set",  "date",     "mode",  "seat",      "problem",
                                                   "seed", "topic",    "level", "line",      "answer",
                                                   "mark", "mistakes", "tries", "hint_rung", "seconds"};
  return columns;
}

std::string sessionTable(const PracticeSession& session, const SeatSheet& sheet) {
  std::string table;
  appendCsvRow(table, resultColumns());
  const TableHead head{setMark(session.set()), sheet.date, std::string(idOf(session.mode())), sheet.seat};
  for (std::size_t i = 0; i < session.count(); ++i)
    if (session.isMade(i) && (session.at(i).handedIn || session.at(i).skipped))
      addRows(table, head, session.at(i), i + 1);
  return table;
}

}  // namespace wardchalk
