#pragma once

#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/check/work_out.h"
#include "core/record/second_check.h"
#include "core/session/case_session.h"

namespace wardchalk::test {

/// Everything that can happen to a session.
enum class Event : std::uint8_t {
  begin,
  compareAlike,
  compareApart,
  firstCorrects,
  secondCorrects,
  record,
  leave,
  apartEntryChanged,
  otherEntryChanged,
  rulesChanged,
  otherOpened,
  newChild,
  cover,
  uncover,
  answer,
};

inline constexpr std::array<std::string_view, 15> eventNames = {"second check begins",
                                                                "compare, alike",
                                                                "compare, apart",
                                                                "first is to correct",
                                                                "second is to correct",
                                                                "record it",
                                                                "leave it",
                                                                "an entry that differed is changed",
                                                                "another entry is changed",
                                                                "house rules are changed",
                                                                "another case is opened",
                                                                "new child",
                                                                "cover",
                                                                "uncover",
                                                                "a question is answered"};

[[nodiscard]] constexpr std::string_view nameOf(Event event) {
  return eventNames[static_cast<std::size_t>(event)];
}

/// A form without widgets, at which two people work as the window lets them. Both have an order that must be
/// asked about; they differ, if they do, in the weight.
class TwoPeople {
 public:
  explicit TwoPeople(std::string_view dose = "60 mg/dose", std::string_view high = "120 mg/m2/dose");

  CaseSession session;
  Shelved form;
  HouseRules rules = exactRules();

  /// Sends it as the window does; false when it was refused. What changes entries is done to the form first,
  /// where there is a form to be seen.
  bool send(Event event);
  /// Goes the shortest way to a state; `covered` lies over the first person's entries alone.
  void reach(SessionState state);
  /// Enters the whole case with this weight.
  void enter(std::string_view weight);
  /// Changes one entry, as typed and read.
  void edit(std::string_view path, std::string_view text);
  /// Opens the same case with this weight, as the window lets it; false when it is refused.
  bool open(std::string_view weight);
  /// What the form's entries come to, with what two people have not settled.
  [[nodiscard]] Worksheet worked() const;
  /// Tells the session of the form as it is.
  void follow();
  /// Every entry that is held anywhere, in the form, put away or under a cover.
  [[nodiscard]] std::string allEntries() const;

 private:
  std::vector<WrittenEntry> papers_;
  [[nodiscard]] bool isFormSeen() const { return !session.isCovered() && !session.isComparing(); }
  bool compare(std::string_view weight);
  bool take(Moved moved);
  void empty();
};

}  // namespace wardchalk::test
