#include "ui/theme/board_palette.h"

#include <QtGlobal>

#include "ui/theme/contrast.h"

namespace wardchalk::ui {

namespace {

constexpr int middleLightness = 128;
/// Text and ground of an ordinary theme stay below this; black on white is 21.
constexpr double highContrastFrom = 19.5;

/// In the order of Ink.
const BoardPalette& lightPalette() {
  static const BoardPalette palette({QColor(0x1B2A26), QColor(0x56605B), QColor(0x7A4E12), QColor(0x2E4039),
                                     QColor(0x24493D), QColor(0xFFFFFF), QColor(0x17604A), QColor(0xA3231C),
                                     QColor(0xDFF1E7), QColor(0xFBE3E0), QColor(0xB9DDF0), QColor(0xFBFAF6),
                                     QColor(0xFFFFFF), QColor(0xE4E0D4), QColor(0xFFE9A8), QColor(0x1B6EC2)});
  return palette;
}

const BoardPalette& darkPalette() {
  static const BoardPalette palette({QColor(0xF1EFE6), QColor(0xB4C2BA), QColor(0xF4D35E), QColor(0xD9DDD4),
                                     QColor(0xF1EFE6), QColor(0x22302B), QColor(0x8FE3BC), QColor(0xFFB1A8),
                                     QColor(0x1D4436), QColor(0x5A2521), QColor(0x3C7391), QColor(0x22302B),
                                     QColor(0x293934), QColor(0x3D5048), QColor(0x5C5526), QColor(0x8CC8FF)});
  return palette;
}

const BoardPalette& contrastLightPalette() {
  static const BoardPalette palette({QColor(0x000000), QColor(0x000000), QColor(0x00005C), QColor(0x000000),
                                     QColor(0x000000), QColor(0xFFFFFF), QColor(0x003B22), QColor(0x7A0000),
                                     QColor(0xFFFFFF), QColor(0xFFFFFF), QColor(0x9CCBEA), QColor(0xFFFFFF),
                                     QColor(0xFFFFFF), QColor(0x000000), QColor(0xFFF27A), QColor(0x0000D0)});
  return palette;
}

const BoardPalette& contrastDarkPalette() {
  static const BoardPalette palette({QColor(0xFFFFFF), QColor(0xFFFFFF), QColor(0xFFFF00), QColor(0xFFFFFF),
                                     QColor(0xFFFFFF), QColor(0x000000), QColor(0x7CFFB8), QColor(0xFFB0B0),
                                     QColor(0x000000), QColor(0x000000), QColor(0x2F6FA8), QColor(0x000000),
                                     QColor(0x000000), QColor(0xFFFFFF), QColor(0x003F8A), QColor(0x00FFFF)});
  return palette;
}

bool namesHighContrast() {
  return qEnvironmentVariable("GTK_THEME").contains(QLatin1String("HighContrast"), Qt::CaseInsensitive);
}

FlagColours plainFlag(Scheme scheme) {
  const BoardPalette& palette = boardPalette(scheme);
  return {palette[Ink::board], palette[Ink::text]};
}

/// Green for safe, yellow to ask, red where the dose must not be given; never used for anything else.
FlagColours colouredFlag(VerdictKind verdict) {
  switch (verdict) {
    case VerdictKind::safe: return {QColor(0x1B6B4A), QColor(0xFFFFFF)};
    case VerdictKind::ask: return {QColor(0xF2C230), QColor(0x1A1A1A)};
    case VerdictKind::unsafe:
    case VerdictKind::notCovered: return {QColor(0xB3261E), QColor(0xFFFFFF)};
    case VerdictKind::undecided: break;
  }
  return {};
}

/// The same hues, deep enough that white ink reads at 7:1.
FlagColours deepFlag(VerdictKind verdict) {
  switch (verdict) {
    case VerdictKind::safe: return {QColor(0x0B5136), QColor(0xFFFFFF)};
    case VerdictKind::ask: return {QColor(0xFFD84A), QColor(0x000000)};
    case VerdictKind::unsafe:
    case VerdictKind::notCovered: return {QColor(0x8C0F0A), QColor(0xFFFFFF)};
    case VerdictKind::undecided: break;
  }
  return {};
}

}  // namespace

const BoardPalette& boardPalette(Scheme scheme) {
  switch (scheme) {
    case Scheme::light: return lightPalette();
    case Scheme::dark: return darkPalette();
    case Scheme::contrastLight: return contrastLightPalette();
    case Scheme::contrastDark: return contrastDarkPalette();
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
