#include "ui/theme/board_palette.h"

#include <QtGlobal>

#include "ui/theme/colours.h"
#include "ui/theme/contrast.h"

namespace wardchalk::ui {

namespace {

constexpr int middleLightness = 128;
/// Text and ground of an ordinary theme stay below this; black on white is 21.
constexpr double highContrastFrom = 19.5;

/// In the order of Ink.
const BoardPalette& lightPalette() {
  static const BoardPalette palette(std::array<QRgb, inkCount>{
      0x1B2A26u, 0x56605Bu, 0x7A4E12u, 0x2E4039u, 0x24493Du, 0xFFFFFFu, 0x17604Au, 0xA3231Cu, 0xDFF1E7u,
      0xFBE3E0u, 0xB9DDF0u, 0xFBFAF6u, 0xFFFFFFu, 0xE4E0D4u, 0xFFE9A8u, 0x1B6EC2u});
  return palette;
}

const BoardPalette& darkPalette() {
  static const BoardPalette palette(std::array<QRgb, inkCount>{
      0xF1EFE6u, 0xB4C2BAu, 0xF4D35Eu, 0xD9DDD4u, 0xF1EFE6u, 0x22302Bu, 0x8FE3BCu, 0xFFB1A8u, 0x1D4436u,
      0x5A2521u, 0x3C7391u, 0x22302Bu, 0x293934u, 0x3D5048u, 0x5C5526u, 0x8CC8FFu});
  return palette;
}

const BoardPalette& contrastLightPalette() {
  static const BoardPalette palette(std::array<QRgb, inkCount>{
      0x000000u, 0x000000u, 0x00005Cu, 0x000000u, 0x000000u, 0xFFFFFFu, 0x003B22u, 0x7A0000u, 0xFFFFFFu,
      0xFFFFFFu, 0x9CCBEAu, 0xFFFFFFu, 0xFFFFFFu, 0x000000u, 0xFFF27Au, 0x0000D0u});
  return palette;
}

const BoardPalette& contrastDarkPalette() {
  static const BoardPalette palette(std::array<QRgb, inkCount>{
      0xFFFFFFu, 0xFFFFFFu, 0xFFFF00u, 0xFFFFFFu, 0xFFFFFFu, 0x000000u, 0x7CFFB8u, 0xFFB0B0u, 0x000000u,
      0x000000u, 0x2F6FA8u, 0x000000u, 0x000000u, 0xFFFFFFu, 0x003F8Au, 0x00FFFFu});
  return palette;
}

bool namesHighContrast() {
  return !areColoursOwn() &&
         qEnvironmentVariable("GTK_THEME").contains(QLatin1String("HighContrast"), Qt::CaseInsensitive);
}

FlagColours plainFlag(Scheme scheme) {
  const BoardPalette& palette = boardPalette(scheme);
  return {palette[Ink::board], palette[Ink::text]};
}

/// Green for safe, yellow to ask, red where the dose must not be given; never used for anything else.
FlagColours colouredFlag(VerdictKind verdict) {
  switch (verdict) {
    case VerdictKind::safe:
      return {QColor::fromRgb(0x1B6B4Au), QColor::fromRgb(0xFFFFFFu)};
    case VerdictKind::ask:
      return {QColor::fromRgb(0xF2C230u), QColor::fromRgb(0x1A1A1Au)};
    case VerdictKind::unsafe:
    case VerdictKind::notCovered:
      return {QColor::fromRgb(0xB3261Eu), QColor::fromRgb(0xFFFFFFu)};
    case VerdictKind::undecided:
      break;
  }
  return {};
}

/// The same hues, deep enough that white ink reads at 7:1.
FlagColours deepFlag(VerdictKind verdict) {
  switch (verdict) {
    case VerdictKind::safe:
      return {QColor::fromRgb(0x0B5136u), QColor::fromRgb(0xFFFFFFu)};
    case VerdictKind::ask:
      return {QColor::fromRgb(0xFFD84Au), QColor::fromRgb(0x000000u)};
    case VerdictKind::unsafe:
    case VerdictKind::notCovered:
      return {QColor::fromRgb(0x8C0F0Au), QColor::fromRgb(0xFFFFFFu)};
    case VerdictKind::undecided:
      break;
  }
  return {};
}

}  // namespace

const BoardPalette& boardPalette(Scheme scheme) {
  switch (scheme) {
    case Scheme::light:
      return lightPalette();
    case Scheme::dark:
      return darkPalette();
    case Scheme::contrastLight:
      return contrastLightPalette();
    case Scheme::contrastDark:
      return contrastDarkPalette();
  }
  return lightPalette();
}

FlagColours flagColours(VerdictKind verdict, Scheme scheme) {
  if (verdict == VerdictKind::undecided) return plainFlag(scheme);
  const bool deep = scheme == Scheme::contrastLight || scheme == Scheme::contrastDark;
  return deep ? deepFlag(verdict) : colouredFlag(verdict);
}

Scheme schemeFor(const QPalette& desktop) {
  const QColor ground = desktop.color(QPalette::Window);
  const bool dark = ground.lightness() < middleLightness;
  const bool far = contrastRatio(ground, desktop.color(QPalette::WindowText)) >= highContrastFrom &&
                   desktop.color(QPalette::Button) == ground;
  if (far || namesHighContrast()) return dark ? Scheme::contrastDark : Scheme::contrastLight;
  return dark ? Scheme::dark : Scheme::light;
}

}  // namespace wardchalk::ui
