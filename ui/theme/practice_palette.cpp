#include "ui/theme/practice_palette.h"

namespace wardchalk::ui {

namespace {

const BoardPalette& lightPractice() {
  static const BoardPalette palette = boardPalette(Scheme::light)
                                          .with(Ink::board, 0xEBEEFAu)
                                          .with(Ink::card, 0xFFFFFFu)
                                          .with(Ink::edge, 0xCFD6EFu)
                                          .with(Ink::disc, 0x2E3A78u);
  return palette;
}

const BoardPalette& darkPractice() {
  static const BoardPalette palette = boardPalette(Scheme::dark)
                                          .with(Ink::board, 0x1C2136u)
                                          .with(Ink::card, 0x272E4Au)
                                          .with(Ink::edge, 0x414B78u)
                                          .with(Ink::quiet, 0xBBC3DCu)
                                          .with(Ink::onDisc, 0x1C2136u);
  return palette;
}

}  // namespace

const BoardPalette& practicePalette(Scheme scheme) {
  switch (scheme) {
    case Scheme::light:
      return lightPractice();
    case Scheme::dark:
      return darkPractice();
    case Scheme::contrastLight:
    case Scheme::contrastDark:
      break;
  }
  return boardPalette(scheme);
}

BandColours bandColours(Scheme scheme) {
  switch (scheme) {
    case Scheme::light:
      return {QColor(0x2E, 0x3A, 0x78), QColor(0x46, 0x54, 0x9A), Qt::white};
    case Scheme::dark:
      return {QColor(0x3A, 0x46, 0x88), QColor(0x4E, 0x5B, 0xA2), Qt::white};
    case Scheme::contrastLight:
      return {Qt::black, QColor(0x3A, 0x3A, 0x3A), Qt::white};
    case Scheme::contrastDark:
      return {Qt::white, QColor(0xCE, 0xCE, 0xCE), Qt::black};
  }
  return {};
}

QPalette practiceWidgets(const QPalette& desktop) {
  const Scheme scheme = schemeFor(desktop);
  if (scheme == Scheme::contrastLight || scheme == Scheme::contrastDark) return desktop;
  const BoardPalette& inks = practicePalette(scheme);
  QPalette own = desktop;
  own.setColor(QPalette::Window, inks[Ink::board]);
  own.setColor(QPalette::Base, inks[Ink::card]);
  own.setColor(QPalette::AlternateBase, inks[Ink::board]);
  own.setColor(QPalette::Button, inks[Ink::card]);
  for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    own.setColor(QPalette::Active, role, inks[Ink::text]);
    own.setColor(QPalette::Inactive, role, inks[Ink::text]);
  }
  own.setColor(QPalette::PlaceholderText, inks[Ink::quiet]);
  return own;
}

}  // namespace wardchalk::ui
