#pragma once

#include <QString>

#include "ui/board/board_story.h"

namespace wardchalk::ui {

/// What a board says at one stage.
struct StageWords {
  QString caption;  ///< the line below the working; may be empty
  QString spoken;   ///< what the stage uncovers, read aloud
};

/// The words of the page's stage at this place. They tell nothing of a later one.
[[nodiscard]] StageWords stageWords(const BoardStory& story, const BoardPlace& place);

/// Everything that is uncovered of the page at this place, read aloud.
[[nodiscard]] QString spokenSoFar(const BoardStory& story, const BoardPlace& place);

}  // namespace wardchalk::ui
