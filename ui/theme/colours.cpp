#include "ui/theme/colours.h"

#include <QApplication>
#include <QStyle>
#include <QVariant>

namespace wardchalk::ui {

namespace {

constexpr auto ownName = "own-colours";
constexpr auto firstWishName = "desktop-wish-first";
constexpr auto wishName = "desktop-wish";
constexpr auto desktopPaletteName = "desktop-colours";
constexpr auto desktopStyleName = "desktop-style";

/// Draws its own controls whatever the palette says, so that dark words would stand on its light buttons.
constexpr auto deafStyle = "windowsvista";

struct OwnColours {
  QRgb window;
  QRgb base;
  QRgb button;
  QRgb text;
  QRgb off;  ///< what cannot be used now
  QRgb hint;
  QRgb chosen;
  QRgb onChosen;
  QRgb link;
  QRgb tip;
};

constexpr std::array ownColours = {
    OwnColours{0xEFEFEF, 0xFFFFFF, 0xE6E6E6, 0x1B2A26, 0x6F7673, 0x56605B, 0x24493D, 0xFFFFFF, 0x1A5A9E,
               0xFFFBE0},
    OwnColours{0x2D2D2D, 0x1F1F1F, 0x3A3A3A, 0xF1EFE6, 0x9A9A9A, 0xB4C2BA, 0x8FE3BC, 0x1B2A26, 0x8CC8FF,
               0x3A3A3A},
    OwnColours{0xFFFFFF, 0xFFFFFF, 0xFFFFFF, 0x000000, 0x595959, 0x000000, 0x000000, 0xFFFFFF, 0x0000B0,
               0xFFFFFF},
    OwnColours{0x000000, 0x000000, 0x000000, 0xFFFFFF, 0xA6A6A6, 0xFFFFFF, 0xFFFFFF, 0x000000, 0x7CD0FF,
               0x000000},
};

constexpr std::array names = {std::string_view("desktop"), std::string_view("light"),
                              std::string_view("dark"), std::string_view("contrast-light"),
                              std::string_view("contrast-dark")};

Scheme schemeOf(Colours colours) {
  switch (colours) {
    case Colours::desktop:
    case Colours::light:
      break;
    case Colours::dark:
      return Scheme::dark;
    case Colours::contrastLight:
      return Scheme::contrastLight;
    case Colours::contrastDark:
      return Scheme::contrastDark;
  }
  return Scheme::light;
}

bool isDark(Scheme scheme) { return scheme == Scheme::dark || scheme == Scheme::contrastDark; }
bool isHigh(Scheme scheme) { return scheme == Scheme::contrastLight || scheme == Scheme::contrastDark; }

bool isDesktopKept() { return qApp->property(desktopPaletteName).isValid(); }

void keepDesktop() {
  if (isDesktopKept()) return;
  qApp->setProperty(desktopPaletteName, QApplication::palette());
  qApp->setProperty(desktopStyleName, QApplication::style()->name());
}

void drawIn(Scheme scheme) {
  keepDesktop();
  if (QApplication::style()->name() == QLatin1String(deafStyle))
    QApplication::setStyle(QStringLiteral("fusion"));
  QApplication::setPalette(ownPalette(scheme));
}

/// A palette that was the desktop's sets nothing by itself, so that later changes are followed again.
void drawAsDesktop() {
  if (!isDesktopKept()) return;
  const QString style = qApp->property(desktopStyleName).toString();
  if (style != QApplication::style()->name()) QApplication::setStyle(style);
  QApplication::setPalette(qApp->property(desktopPaletteName).value<QPalette>());
  qApp->setProperty(desktopPaletteName, {});
}

std::optional<DesktopWish> wishKept(const char* name) {
  const QVariant kept = qApp->property(name);
  return kept.isValid() ? std::optional(kept.value<DesktopWish>()) : std::nullopt;
}

/// One change of colours, not two, where the wish is another than the desktop's colours.
void drawAsWished() {
  const std::optional<DesktopWish> wish = wishKept(wishName);
  const QPalette desktop =
      isDesktopKept() ? qApp->property(desktopPaletteName).value<QPalette>() : QApplication::palette();
  const Scheme given = schemeFor(desktop);
  const Scheme wished = wish ? schemeWished(given, wishKept(firstWishName).value_or(*wish), *wish) : given;
  wished == given ? drawAsDesktop() : drawIn(wished);
}

}  // namespace

bool areColoursOwn() { return qApp && qApp->property(ownName).isValid(); }

std::string_view nameOf(Colours colours) { return names[static_cast<std::size_t>(colours)]; }

std::optional<Colours> coloursNamed(const QString& name) {
  for (const Colours colours : allColours)
    if (name == QLatin1String(nameOf(colours).data(), static_cast<qsizetype>(nameOf(colours).size())))
      return colours;
  return std::nullopt;
}

QPalette ownPalette(Scheme scheme) {
  const OwnColours& own = ownColours[static_cast<std::size_t>(scheme)];
  QPalette palette(QColor(own.button), QColor(own.window));
  const auto set = [&palette](QPalette::ColorRole role, QRgb colour) {
    for (const QPalette::ColorGroup group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled})
      palette.setColor(group, role, QColor(colour));
  };
  set(QPalette::Window, own.window);
  set(QPalette::Base, own.base);
  set(QPalette::AlternateBase, own.window);
  set(QPalette::Button, own.button);
  for (const QPalette::ColorRole role :
       {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText}) {
    set(role, own.text);
    palette.setColor(QPalette::Disabled, role, QColor(own.off));
  }
  set(QPalette::PlaceholderText, own.hint);
  set(QPalette::Highlight, own.chosen);
  set(QPalette::HighlightedText, own.onChosen);
  set(QPalette::Link, own.link);
  set(QPalette::LinkVisited, own.link);
  set(QPalette::ToolTipBase, own.tip);
  return palette;
}

void useColours(Colours colours) {
  const bool own = colours != Colours::desktop;
  qApp->setProperty(ownName, own ? QVariant(true) : QVariant());
  own ? drawIn(schemeOf(colours)) : drawAsWished();
}

void followDesktop(const DesktopWish& wish) {
  if (wishKept(wishName) == wish) return;
  if (!wishKept(firstWishName)) qApp->setProperty(firstWishName, QVariant::fromValue(wish));
  qApp->setProperty(wishName, QVariant::fromValue(wish));
  if (!areColoursOwn()) drawAsWished();
}

Scheme schemeWished(Scheme given, const DesktopWish& first, const DesktopWish& now) {
  using Ground = DesktopWish::Ground;
  const bool givenDark = isDark(given) && first.ground != Ground::dark;
  const bool dark = now.ground == Ground::any ? givenDark : now.ground == Ground::dark;
  const bool high = now.highContrast || (isHigh(given) && !first.highContrast);
  if (high) return dark ? Scheme::contrastDark : Scheme::contrastLight;
  return dark ? Scheme::dark : Scheme::light;
}

}  // namespace wardchalk::ui
