#include "ui/board/board_keys.h"

#include <Qt>
#include <array>

#include "core/words/phrasebook.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

struct KeyRow {
  int key;
  BoardAct act;
};

constexpr std::array keys = {
    KeyRow{Qt::Key_Space, BoardAct::next},
    KeyRow{Qt::Key_Right, BoardAct::next},
    KeyRow{Qt::Key_PageDown, BoardAct::next},
    KeyRow{Qt::Key_Return, BoardAct::enter},
    KeyRow{Qt::Key_Enter, BoardAct::enter},
    KeyRow{Qt::Key_Backspace, BoardAct::back},
    KeyRow{Qt::Key_Left, BoardAct::back},
    KeyRow{Qt::Key_PageUp, BoardAct::back},
    KeyRow{Qt::Key_Home, BoardAct::first},
    KeyRow{Qt::Key_End, BoardAct::last},
    KeyRow{Qt::Key_B, BoardAct::blank},
    KeyRow{Qt::Key_Period, BoardAct::blank},
    KeyRow{Qt::Key_Escape, BoardAct::leave},
    KeyRow{Qt::Key_F11, BoardAct::leave},
    KeyRow{Qt::Key_P, BoardAct::predict},
    KeyRow{Qt::Key_T, BoardAct::turn},
    KeyRow{Qt::Key_Tab, BoardAct::chooseNext},
    KeyRow{Qt::Key_Down, BoardAct::chooseNext},
    KeyRow{Qt::Key_Backtab, BoardAct::chooseBefore},
    KeyRow{Qt::Key_Up, BoardAct::chooseBefore},
    KeyRow{Qt::Key_L, BoardAct::list},
    KeyRow{Qt::Key_H, BoardAct::keys},
    KeyRow{Qt::Key_F1, BoardAct::keys},
    KeyRow{Qt::Key_F3, BoardAct::sayAgain},
    KeyRow{Qt::Key_D, BoardAct::otherLook},
    KeyRow{Qt::Key_S, BoardAct::otherScreen},
    KeyRow{Qt::Key_I, BoardAct::inShort},
    KeyRow{Qt::Key_Plus, BoardAct::larger},
    KeyRow{Qt::Key_Equal, BoardAct::larger},
    KeyRow{Qt::Key_Minus, BoardAct::smaller},
};

}  // namespace

std::optional<BoardAct> boardActFor(int key) {
  for (const KeyRow& row : keys)
    if (row.key == key) return row.act;
  return std::nullopt;
}

QStringList boardKeysText() {
  QStringList lines;
  for (const PhraseId line :
       {PhraseId::board_keysTitle, PhraseId::board_keyNext, PhraseId::board_keyBack, PhraseId::board_keyJump,
        PhraseId::board_keyTurn, PhraseId::board_keyPredict, PhraseId::board_keyBlank,
        PhraseId::board_keyLook, PhraseId::board_keySize, PhraseId::board_keyShort, PhraseId::board_keyLeave})
    lines << fromCore(say(line));
  return lines;
}

}  // namespace wardchalk::ui
