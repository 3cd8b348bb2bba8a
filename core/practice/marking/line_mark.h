#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "core/practice/lines/student_line.h"
#include "core/practice/marking/mistake.h"

namespace wardchalk {

/// How a line was marked. `unsure`: more than one known mistake explains it, and all are listed. What could
/// not be read, and where nothing is written, is neither right nor wrong: it is no try and costs nothing.
enum class Mark : std::uint8_t { right, wrong, unsure, unread, blank };

[[nodiscard]] constexpr std::string_view idOf(Mark mark) {
  constexpr std::array<std::string_view, 5> ids = {"right", "wrong", "unsure", "unread", "blank"};
  return ids[static_cast<std::size_t>(mark)];
}

/// Whether something was written that could be judged.
[[nodiscard]] constexpr bool isTry(Mark mark) { return mark != Mark::unread && mark != Mark::blank; }

/// What a line is looked at for. What is right on a wrong line is said too.
enum class Aspect : std::uint8_t { setUp, units, arithmetic, rounding, writing };
inline constexpr std::size_t aspectCount = 5;

[[nodiscard]] constexpr std::string_view idOf(Aspect aspect) {
  constexpr std::array<std::string_view, aspectCount> ids = {"set-up", "units", "arithmetic", "rounding",
                                                             "writing"};
  return ids[static_cast<std::size_t>(aspect)];
}

enum class Standing : std::uint8_t { unknown, good, bad };

/// What is said of a line beside its mark; the list is in notes.def.
enum class LineNote : std::uint8_t {
#define WARDCHALK_LINE_NOTE(name, id) name,
#include "core/practice/marking/notes.def"
#undef WARDCHALK_LINE_NOTE
};

inline constexpr std::array lineNoteIds = {
#define WARDCHALK_LINE_NOTE(name, id) std::string_view(id),
#include "core/practice/marking/notes.def"
#undef WARDCHALK_LINE_NOTE
};

[[nodiscard]] constexpr std::string_view idOf(LineNote note) {
  return lineNoteIds[static_cast<std::size_t>(note)];
}

/// The mark of one line, with what is known of its mistakes. It holds no sentence and no right value.
struct LineMark {
  Mark mark = Mark::wrong;
  std::vector<MistakeId> mistakes;  ///< of a wrong line the one that explains it, then those of writing
  std::array<Standing, aspectCount> aspects{};
  std::vector<LineNote> notes;
  std::optional<LineFault> fault;   ///< why the line could not be read
  std::vector<LineRemark> remarks;  ///< of its writing, with their places

  [[nodiscard]] Standing standing(Aspect aspect) const { return aspects[static_cast<std::size_t>(aspect)]; }
  void set(Aspect aspect, Standing standing) { aspects[static_cast<std::size_t>(aspect)] = standing; }
  [[nodiscard]] bool has(MistakeId mistake) const;
  [[nodiscard]] bool has(LineNote note) const;
};

}  // namespace wardchalk
