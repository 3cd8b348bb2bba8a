#include "ui/paper/paper_palette.h"

namespace wardchalk::ui {

const BoardPalette& paperPalette() {
  constexpr QRgb black = 0x000000u;
  constexpr QRgb white = 0xFFFFFFu;
  constexpr QRgb filled = 0xD8D8D8u;  // what a syringe holds: light enough for the black marks on it
  constexpr QRgb hairline = 0xA0A0A0u;
  // in the order of Ink: text, quiet, accent, line, disc, onDisc, holds, fails, holdsFill, failsFill, liquid,
  // board, card, edge, lit, focus
  static const BoardPalette palette(std::array<QRgb, inkCount>{black, black, black, black, black, white,
                                                               black, white, white, black, filled, white,
                                                               white, hairline, white, black});
  return palette;
}

}  // namespace wardchalk::ui
