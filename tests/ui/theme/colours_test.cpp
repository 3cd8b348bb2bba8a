#include "ui/theme/colours.h"

#include <QApplication>
#include <QTest>
#include <functional>

#include "tests/ui/support/desktops.h"
#include "tests/ui/support/qt_class.h"
#include "ui/theme/contrast.h"
#include "ui/theme/practice_palette.h"
#include "ui/theme/surface.h"

namespace wardchalk::ui::test::colours_test {

namespace {

/// Source: WCAG 2.2, 1.4.3 (text 4.5:1), 1.4.11 (what shows a control or its state 3:1), 1.4.6 (7:1). What
/// cannot be used now is exempt from all of them; 3:1 is our own least.
constexpr double textContrast = 4.5;
constexpr double partContrast = 3.0;
constexpr double enhancedContrast = 7.0;

struct Pair {
  const char* name;
  QPalette::ColorRole ink;
  QPalette::ColorRole ground;
};
constexpr Pair pairs[] = {
    {"words in a window", QPalette::WindowText, QPalette::Window},
    {"words in a box", QPalette::Text, QPalette::Base},
    {"words in every other row", QPalette::Text, QPalette::AlternateBase},
    {"words on a button", QPalette::ButtonText, QPalette::Button},
    {"words that are chosen", QPalette::HighlightedText, QPalette::Highlight},
    {"words of a tip", QPalette::ToolTipText, QPalette::ToolTipBase},
    {"a link in a window", QPalette::Link, QPalette::Window},
    {"a link in a box", QPalette::Link, QPalette::Base},
    {"a visited link", QPalette::LinkVisited, QPalette::Base},
    {"a hint in an empty box", QPalette::PlaceholderText, QPalette::Base},
};

/// The grounds on which boxes, their edges and the ring of the keyboard lie.
constexpr QPalette::ColorRole grounds[] = {QPalette::Window, QPalette::Base, QPalette::Button};

bool isHigh(Scheme scheme) { return scheme == Scheme::contrastLight || scheme == Scheme::contrastDark; }

const Desktop& desktopOf(Scheme scheme) {
  for (const Desktop& one : desktops)
    if (one.scheme == scheme) return one;
  return desktops.front();
}

/// A palette of the program in one scheme: its own, or on a desktop of that scheme.
struct Made {
  QByteArray name;
  Scheme scheme;
  std::function<QPalette()> palette;
};

std::vector<Made> everyPalette() {
  std::vector<Made> all;
  for (const Scheme scheme : allSchemes) {
    const QByteArray look = desktopOf(scheme).name;
    const auto desktop = [scheme] { return paletteOf(desktopOf(scheme)); };
    const auto own = [scheme] { return ownPalette(scheme); };
    all.push_back({look + ", own", scheme, own});
    all.push_back({look + ", own, form", scheme, [own] { return surfacePalette(own()); }});
    all.push_back({look + ", own, practice", scheme, [own] { return practiceWidgets(own()); }});
    all.push_back({look + ", desktop's, form", scheme, [desktop] { return surfacePalette(desktop()); }});
    all.push_back({look + ", desktop's, practice", scheme, [desktop] { return practiceWidgets(desktop()); }});
  }
  return all;
}

}  // namespace

/// Every colour of windows, boxes and buttons against what it lies on, in every scheme.
class ColoursTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() { qunsetenv("GTK_THEME"); }
  void cleanup() {
    followDesktop({});
    useColours(Colours::desktop);
    QApplication::setPalette(before_);
  }

  void everyWordCanBeRead_data() { addPalettes(); }
  void everyWordCanBeRead();
  void everyEdgeAndRingIsSeen_data() { addPalettes(); }
  void everyEdgeAndRingIsSeen();
  void whatCannotBeUsedIsStillSeen_data() { addPalettes(); }
  void whatCannotBeUsedIsStillSeen();
  void ownColoursAreOfTheirScheme_data() { addPalettes(); }
  void ownColoursAreOfTheirScheme();
  void namesComeBack();
  void theDesktopComesBack();
  void aWishIsOfItsScheme_data();
  void aWishIsOfItsScheme();
  void aWishIsFollowedUnderTheUsersChoice();
  void whatTheDesktopGivesAsItWishesIsTaken();

 private:
  static void addPalettes() {
    QTest::addColumn<int>("at");
    for (int at = 0; at < static_cast<int>(everyPalette().size()); ++at)
      QTest::addRow("%s", everyPalette()[static_cast<std::size_t>(at)].name.constData()) << at;
  }
  QPalette before_ = QApplication::palette();
};

/// The colours that a desktop gives for choosing and for tips are its own affair; what we set is ours.
void ColoursTest::everyWordCanBeRead() {
  QFETCH(int, at);
  const Made made = everyPalette()[static_cast<std::size_t>(at)];
  const QPalette palette = made.palette();
  const bool own = made.name.contains("own");
  for (const Pair& pair : pairs) {
    const bool ours = own || pair.ground == QPalette::Window || pair.ink == QPalette::Text ||
                      pair.ground == QPalette::Button;
    if (!ours || (!own && pair.ink == QPalette::Link)) continue;
    for (const QPalette::ColorGroup group : {QPalette::Active, QPalette::Inactive}) {
      const double found = contrastRatio(palette.color(group, pair.ink), palette.color(group, pair.ground));
      QVERIFY2(found >= (own && isHigh(made.scheme) ? enhancedContrast : textContrast),
               qPrintable(QStringLiteral("%1: %2").arg(QLatin1String(pair.name)).arg(found)));
    }
  }
}

void ColoursTest::everyEdgeAndRingIsSeen() {
  QFETCH(int, at);
  const Made made = everyPalette()[static_cast<std::size_t>(at)];
  const QPalette palette = made.palette();
  const bool practice = made.name.contains("practice");
  const Scheme scheme = schemeFor(palette);
  const BoardPalette& inks = practice ? practicePalette(scheme) : boardPalette(scheme);
  const QColor edge = practice ? controlColours(scheme).edge : inks[Ink::quiet];
  for (const QPalette::ColorRole ground : grounds)
    for (const auto& [what, ink] : {std::pair("edge", edge), std::pair("ring", inks[Ink::focus])}) {
      const double found = contrastRatio(ink, palette.color(ground));
      QVERIFY2(found >= partContrast, qPrintable(QStringLiteral("%1 on %2: %3")
                                                     .arg(QLatin1String(what))
                                                     .arg(palette.color(ground).name())
                                                     .arg(found)));
    }
}

void ColoursTest::whatCannotBeUsedIsStillSeen() {
  QFETCH(int, at);
  const Made made = everyPalette()[static_cast<std::size_t>(at)];
  if (!made.name.contains("own")) return;
  const QPalette palette = made.palette();
  for (const Pair& pair : {pairs[0], pairs[1], pairs[3]}) {
    const double found = contrastRatio(palette.color(QPalette::Disabled, pair.ink),
                                       palette.color(QPalette::Disabled, pair.ground));
    QVERIFY2(found >= partContrast,
             qPrintable(QStringLiteral("%1: %2").arg(QLatin1String(pair.name)).arg(found)));
  }
}

void ColoursTest::ownColoursAreOfTheirScheme() {
  QFETCH(int, at);
  const Made made = everyPalette()[static_cast<std::size_t>(at)];
  QCOMPARE(schemeFor(made.palette()), made.scheme);
}

void ColoursTest::namesComeBack() {
  for (const Colours colours : allColours)
    QCOMPARE(coloursNamed(QString::fromUtf8(nameOf(colours).data())), std::optional(colours));
  for (const char* word : {"", "Dark", "dark ", "contrast", "5", "desktopp"})
    QVERIFY2(!coloursNamed(QString::fromUtf8(word)), word);
}

void ColoursTest::theDesktopComesBack() {
  const QPalette desktop = QApplication::palette();
  useColours(Colours::desktop);  // nothing to come back from
  QCOMPARE(QApplication::palette(), desktop);
  useColours(Colours::dark);
  useColours(Colours::contrastDark);
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::contrastDark);
  useColours(Colours::desktop);
  QCOMPARE(QApplication::palette(), desktop);
  QCOMPARE(QApplication::palette().resolveMask(), desktop.resolveMask());
}

void ColoursTest::aWishIsOfItsScheme_data() {
  using Ground = DesktopWish::Ground;
  QTest::addColumn<Scheme>("given");
  QTest::addColumn<DesktopWish>("first");
  QTest::addColumn<DesktopWish>("now");
  QTest::addColumn<Scheme>("wished");
  const DesktopWish nothing, dark{Ground::dark, false}, light{Ground::light, false}, high{Ground::any, true},
      darkHigh{Ground::dark, true}, lightHigh{Ground::light, true};
  const auto row = [](const char* name, Scheme given, const DesktopWish& first, const DesktopWish& now,
                      Scheme wished) { QTest::addRow("%s", name) << given << first << now << wished; };
  row("nothing is wished of a light desktop", Scheme::light, nothing, nothing, Scheme::light);
  row("nothing is wished of a dark theme", Scheme::dark, nothing, nothing, Scheme::dark);
  row("nothing is wished of a theme of high contrast", Scheme::contrastDark, nothing, nothing,
      Scheme::contrastDark);
  row("dark where Qt reads nothing", Scheme::light, dark, dark, Scheme::dark);
  row("dark as Qt read it", Scheme::dark, dark, dark, Scheme::dark);
  row("dark later", Scheme::light, nothing, dark, Scheme::dark);
  row("dark is over", Scheme::dark, dark, nothing, Scheme::light);
  row("dark is over where Qt read nothing", Scheme::light, dark, nothing, Scheme::light);
  row("light after dark", Scheme::dark, dark, light, Scheme::light);
  row("light after nothing, in a dark theme", Scheme::dark, nothing, light, Scheme::light);
  row("nothing after light, in a dark theme", Scheme::dark, light, nothing, Scheme::dark);
  row("contrast alone", Scheme::light, nothing, high, Scheme::contrastLight);
  row("contrast alone in a dark theme", Scheme::dark, nothing, high, Scheme::contrastDark);
  row("contrast and dark", Scheme::light, nothing, darkHigh, Scheme::contrastDark);
  row("contrast stays when dark goes", Scheme::dark, darkHigh, high, Scheme::contrastLight);
  row("dark stays when contrast goes", Scheme::contrastDark, darkHigh, dark, Scheme::dark);
  row("contrast and light after contrast and dark", Scheme::contrastDark, darkHigh, lightHigh,
      Scheme::contrastLight);
  row("contrast is over", Scheme::contrastLight, high, nothing, Scheme::light);
  row("a theme of high contrast that nobody wished stays when dark comes", Scheme::contrastLight, nothing,
      dark, Scheme::contrastDark);
}

void ColoursTest::aWishIsOfItsScheme() {
  QFETCH(Scheme, given);
  QFETCH(DesktopWish, first);
  QFETCH(DesktopWish, now);
  QFETCH(Scheme, wished);
  QCOMPARE(schemeWished(given, first, now), wished);
}

void ColoursTest::aWishIsFollowedUnderTheUsersChoice() {
  const QPalette desktop = QApplication::palette();
  followDesktop({DesktopWish::Ground::dark, true});
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::contrastDark);
  QVERIFY(!areColoursOwn());
  useColours(Colours::light);
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::light);
  followDesktop({DesktopWish::Ground::dark, false});  // the user's choice is stronger
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::light);
  useColours(Colours::desktop);  // and what was wished meanwhile counts again
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::dark);
  followDesktop({});
  QCOMPARE(QApplication::palette(), desktop);
  QCOMPARE(QApplication::palette().resolveMask(), desktop.resolveMask());
}

/// A desktop that has its own dark keeps it.
void ColoursTest::whatTheDesktopGivesAsItWishesIsTaken() {
  QPalette dusk(QColor(0x40, 0x30, 0x30), QColor(0x30, 0x20, 0x20));
  dusk.setColor(QPalette::Base, QColor(0x20, 0x10, 0x10));
  QCOMPARE(schemeFor(dusk), Scheme::dark);
  QApplication::setPalette(dusk);
  dusk = QApplication::palette();
  followDesktop({DesktopWish::Ground::dark, false});
  QCOMPARE(QApplication::palette(), dusk);
  followDesktop({DesktopWish::Ground::light, false});
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::light);
  followDesktop({DesktopWish::Ground::dark, false});
  QCOMPARE(QApplication::palette(), dusk);
}

WARDCHALK_QT_TEST(ColoursTest)

}  // namespace wardchalk::ui::test::colours_test

#include "colours_test.moc"
