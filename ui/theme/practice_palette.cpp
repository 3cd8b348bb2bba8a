#include "ui/theme/practice_palette.h"

#include <array>

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

ControlColours controlColours(Scheme scheme) {
  switch (scheme) {
    case Scheme::light:
      return {QColor(0x5F, 0x68, 0x8C), QColor(0xBD, 0xC3, 0xDA), QColor(0x7C, 0x83, 0x9E)};
    case Scheme::dark:
      return {QColor(0x9A, 0xA4, 0xCE), QColor(0x50, 0x59, 0x80), QColor(0x83, 0x8B, 0xA8)};
    case Scheme::contrastLight:
      return {Qt::black, QColor(0x9A, 0x9A, 0x9A), QColor(0x70, 0x70, 0x70)};
    case Scheme::contrastDark:
      return {Qt::white, QColor(0x6A, 0x6A, 0x6A), QColor(0x8C, 0x8C, 0x8C)};
  }
  return {};
}

namespace {

constexpr std::array wordRoles = {QPalette::WindowText, QPalette::Text, QPalette::ButtonText};

void setGrounds(QPalette& own, const BoardPalette& inks) {
  own.setColor(QPalette::Window, inks[Ink::board]);
  own.setColor(QPalette::Base, inks[Ink::card]);
  own.setColor(QPalette::AlternateBase, inks[Ink::board]);
  own.setColor(QPalette::Button, inks[Ink::card]);
  for (const QPalette::ColorRole role : wordRoles) {
    own.setColor(QPalette::Active, role, inks[Ink::text]);
    own.setColor(QPalette::Inactive, role, inks[Ink::text]);
  }
  own.setColor(QPalette::PlaceholderText, inks[Ink::quiet]);
}

}  // namespace

QPalette practiceWidgets(const QPalette& desktop) {
  const Scheme scheme = schemeFor(desktop);
  const BoardPalette& inks = practicePalette(scheme);
  QPalette own = desktop;
  if (scheme == Scheme::light || scheme == Scheme::dark) setGrounds(own, inks);
  own.setColor(QPalette::Highlight, inks[Ink::disc]);
  own.setColor(QPalette::HighlightedText, inks[Ink::onDisc]);
  for (const QPalette::ColorRole role : wordRoles)
    own.setColor(QPalette::Disabled, role, controlColours(scheme).offText);
  return own;
}

}  // namespace wardchalk::ui
