#pragma once

#include <QColor>
#include <QPalette>
#include <array>
#include <cstdint>

#include "core/check/worksheet.h"

namespace wardchalk::ui {

/// The four ways in which flag, amount and working are coloured. They follow the desktop.
enum class Scheme : std::uint8_t { light, dark, contrastLight, contrastDark };

inline constexpr std::array allSchemes = {Scheme::light, Scheme::dark, Scheme::contrastLight,
                                          Scheme::contrastDark};

/// What a thing on the board is drawn in.
enum class Ink : std::uint8_t {
  text,       ///< numbers, units, questions
  quiet,      ///< reasons, tags, what is looked for
  accent,     ///< letters of struck pairs and the strokes through them
  line,       ///< fraction bars, number lines, the barrel of a syringe
  disc,       ///< ground of a step's number
  onDisc,     ///< the step's number
  holds,      ///< the word "true" and the allowed stretch
  fails,      ///< the word "false"
  holdsFill,  ///< ground under "true"
  failsFill,  ///< ground under "false"
  liquid,     ///< what a syringe holds
  board,      ///< the surface that cards lie on
  card,       ///< a card's ground
  edge,       ///< a card's edge; says nothing, so it may be faint
  lit,        ///< ground of a number that is pointed at
  focus,      ///< the ring round what has the keyboard
};

inline constexpr std::size_t inkCount = static_cast<std::size_t>(Ink::focus) + 1;

/// The colours of the board surface in one scheme.
class BoardPalette {
 public:
  /// One colour for each Ink, in their order, as 0xRRGGBB.
  explicit BoardPalette(const std::array<QRgb, inkCount>& colours) : colours_(colours) {}
  [[nodiscard]] QColor operator[](Ink ink) const {
    return QColor::fromRgb(colours_[static_cast<std::size_t>(ink)]);
  }
  /// The same with one ink of another colour.
  [[nodiscard]] BoardPalette with(Ink ink, QRgb colour) const {
    BoardPalette other = *this;
    other.colours_[static_cast<std::size_t>(ink)] = colour;
    return other;
  }

 private:
  std::array<QRgb, inkCount> colours_;
};

[[nodiscard]] const BoardPalette& boardPalette(Scheme scheme);

/// Fill and ink of a flag. An undecided flag has no fill of its own: `fill` is the surface it lies on.
struct FlagColours {
  QColor fill;
  QColor ink;
};
[[nodiscard]] FlagColours flagColours(VerdictKind verdict, Scheme scheme);

/// The scheme that fits the desktop's palette: dark when its window is darker than middle grey; high contrast
/// when its text and ground are as far apart as can be, or when the desktop names a high-contrast theme in
/// the environment and the user chose no other colours for the program.
[[nodiscard]] Scheme schemeFor(const QPalette& desktop);

}  // namespace wardchalk::ui
