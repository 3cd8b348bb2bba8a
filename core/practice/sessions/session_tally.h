#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/practice/sessions/session.h"

namespace wardchalk {

/// How many lines of the problems that were handed in went how.
struct LineTally {
  int lines = 0;
  int atOnce = 0;    ///< right the first time and without a hint
  int inTheEnd = 0;  ///< right as they were handed in
  friend bool operator==(const LineTally&, const LineTally&) = default;
};

struct TopicTally {
  Topic topic;
  LineTally lines;
  friend bool operator==(const TopicTally&, const TopicTally&) = default;
};

/// In how many lines a mistake was met, corrected ones too.
struct MistakeTally {
  MistakeId mistake;
  int lines;
  friend bool operator==(const MistakeTally&, const MistakeTally&) = default;
};

/// What a session came to. Problems that were skipped or are still open count nowhere but in their own
/// number.
struct SessionTally {
  int handedIn = 0;
  int skipped = 0;
  LineTally lines;
  std::vector<TopicTally> topics;      ///< in the order in which they were met
  std::vector<MistakeTally> mistakes;  ///< the most frequent first, then by number
  /// What to practise next: the topic that exercises the most frequent mistake; where no mistake has one, the
  /// topic with the smallest share of lines right at once; none where all were.
  std::optional<Topic> next;
};
[[nodiscard]] SessionTally tallyOf(const PracticeSession& session);

/// The topic that exercises what a mistake is about; none for sums and for how a line is written, which every
/// topic exercises.
[[nodiscard]] std::optional<Topic> topicFor(Spot spot);

/// Results as a table of RFC 4180, with a header: problem, seed, topic, level, line, mark, slips, hint_rung,
/// tries, seconds; a row for each line of each problem that was handed in or skipped. Problems are counted
/// from 1; the mark of a skipped one is "skipped"; slips are numbers of mistakes, those corrected included,
/// parted by spaces.
[[nodiscard]] std::string sessionTable(const PracticeSession& session);

}  // namespace wardchalk
