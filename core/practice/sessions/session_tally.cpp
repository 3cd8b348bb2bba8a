#include "core/practice/sessions/session_tally.h"

#include <algorithm>

#include "core/record/csv.h"

namespace wardchalk {

namespace {

void count(LineTally& tally, const PracticeLine& line) {
  ++tally.lines;
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

std::optional<Topic> weakest(const SessionTally& tally) {
  const TopicTally* worst = nullptr;
  for (const TopicTally& topic : tally.topics) {
    if (topic.lines.atOnce == topic.lines.lines) continue;
    // atOnce/lines compared crosswise, in whole numbers
    if (!worst || topic.lines.atOnce * worst->lines.lines < worst->lines.atOnce * topic.lines.lines)
      worst = &topic;
  }
  return worst ? std::optional(worst->topic) : std::nullopt;
}

/// Every line of the topic was right at once.
bool isMastered(const SessionTally& tally, Topic topic) {
  const auto known = std::ranges::find(tally.topics, topic, &TopicTally::topic);
  return known != tally.topics.end() && known->lines.atOnce == known->lines.lines;
}

/// What to train next: what the most frequent mistake is about, or the topic with most lines not right at
/// once.
std::optional<Topic> nextOf(const SessionTally& tally) {
  for (const MistakeTally& mistake : tally.mistakes) {
    const auto topic = topicFor(infoOf(mistake.mistake).spot);
    if (!topic) break;  // it belongs to no topic: practise where most lines went wrong
    if (!isMastered(tally, *topic)) return topic;
  }
  return weakest(tally);
}

std::string slipsOf(const PracticeLine& line) {
  std::string slips;
  for (const MistakeId mistake : line.met) slips.append(slips.empty() ? "" : " ").append(idOf(mistake));
  return slips;
}

void addRows(std::string& table, const PracticeProblem& problem, std::size_t number) {
  for (std::size_t i = 0; i < problem.lines.size(); ++i) {
    const PracticeLine& line = problem.lines[i];
    appendCsvRow(
        table,
        {std::to_string(number), std::to_string(problem.problem.seed),
         std::string(idOf(problem.problem.topic)), std::to_string(problem.problem.level),
         std::string(idOf(problem.problem.asks[i])),
         problem.skipped || !line.marked ? "skipped" : std::string(idOf(line.marked->mark.mark)),
         slipsOf(line), std::to_string(line.rung), std::to_string(line.tries), std::to_string(line.seconds)});
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

std::string sessionTable(const PracticeSession& session) {
  std::string table;
  appendCsvRow(
      table, {"problem", "seed", "topic", "level", "line", "mark", "slips", "hint_rung", "tries", "seconds"});
  for (std::size_t i = 0; i < session.count(); ++i)
    if (session.isMade(i) && (session.at(i).handedIn || session.at(i).skipped))
      addRows(table, session.at(i), i + 1);
  return table;
}

}  // namespace wardchalk
