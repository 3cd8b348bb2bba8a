#pragma once

#include <QStringList>
#include <cstdint>
#include <optional>

namespace wardchalk::ui {

/// What a key does on the board.
enum class BoardAct : std::uint8_t {
  next,
  enter,  ///< the typed step, else the chosen factor, else the next stage
  back,
  first,
  last,
  blank,
  leave,
  predict,
  turn,
  chooseNext,
  chooseBefore,
  list,
  keys,
  sayAgain,
  otherLook,
  otherScreen,
  inShort,
  larger,
  smaller,
  usualSize,  ///< has no key of its own: Ctrl+0
};

/// What this key of Qt does; nothing for other keys. Digits are not here.
[[nodiscard]] std::optional<BoardAct> boardActFor(int key);

/// The keys in words, line by line, with a title before them.
[[nodiscard]] QStringList boardKeysText();

}  // namespace wardchalk::ui
