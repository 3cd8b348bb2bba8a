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
  int unread = 0;    ///< handed in with what could not be read
  int blank = 0;     ///< handed in with nothing written
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
  /// What to practise next, by all that was not right at once: the topic that was worked and the one that
  /// exercises a mistake that was met each count a line; what counts most is next, and never a topic whose
  /// lines were all right at once. None where all were right.
  std::optional<Topic> next;
};
[[nodiscard]] SessionTally tallyOf(const PracticeSession& session);

/// The topic that exercises what a mistake is about; none for sums and for how a line is written, which every
/// topic exercises.
[[nodiscard]] std::optional<Topic> topicFor(Spot spot);

/// Who and when, as far as it is told: never a name.
struct SeatSheet {
  std::string seat;  ///< the code that a student types
  std::string date;  ///< as it is to stand in the table; the core knows no clock
};

/// Columns of a table of results, in their order.
[[nodiscard]] const std::vector<std::string>& resultColumns();

/// Results as a table of RFC 4180, with a header (resultColumns): a row for each line of each problem that
/// was handed in or skipped. `set` is the set's mark (setMark), by which tables of one sheet are known.
/// Problems are counted from 1; the mark of a skipped one is "skipped", of what could not be read "unread",
/// of an empty line "blank"; mistakes are numbers, those corrected included, parted by spaces.
[[nodiscard]] std::string sessionTable(const PracticeSession& session, const SeatSheet& sheet = {});

}  // namespace wardchalk
