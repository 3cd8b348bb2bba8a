#include "ui/theme/board_palette.h"

#include <QTest>

#include "tests/ui/support/qt_class.h"
#include "ui/theme/contrast.h"
#include "ui/theme/practice_palette.h"

namespace wardchalk::ui::test::board_palette_test {

namespace {

/// Source: WCAG 2.2, 1.4.3 (text 4.5:1), 1.4.11 (graphical parts 3:1), 1.4.6 (enhanced contrast 7:1).
constexpr double textContrast = 4.5;
constexpr double lineContrast = 3.0;
constexpr double enhancedContrast = 7.0;

struct Pair {
  const char* name;
  Ink ink;
  Ink ground;
  double least;
};

constexpr Pair pairs[] = {
    {"text on card", Ink::text, Ink::card, textContrast},
    {"text on board", Ink::text, Ink::board, textContrast},
    {"text on lit ground", Ink::text, Ink::lit, textContrast},
    {"quiet on card", Ink::quiet, Ink::card, textContrast},
    {"quiet on board", Ink::quiet, Ink::board, textContrast},
    {"accent on card", Ink::accent, Ink::card, textContrast},
    {"accent on lit ground", Ink::accent, Ink::lit, textContrast},
    {"step number on its disc", Ink::onDisc, Ink::disc, textContrast},
    {"true on its ground", Ink::holds, Ink::holdsFill, textContrast},
    {"false on its ground", Ink::fails, Ink::failsFill, textContrast},
    {"bar on card", Ink::line, Ink::card, lineContrast},
    {"mark on liquid", Ink::line, Ink::liquid, lineContrast},
    {"allowed stretch on card", Ink::holds, Ink::card, lineContrast},
    {"sign of a finding on board", Ink::fails, Ink::board, lineContrast},
    {"disc on card", Ink::disc, Ink::card, lineContrast},
    {"focus ring on card", Ink::focus, Ink::card, lineContrast},
    {"focus ring on board", Ink::focus, Ink::board, lineContrast},
};

QByteArray nameOf(Scheme scheme) {
  switch (scheme) {
    case Scheme::light:
      return "light";
    case Scheme::dark:
      return "dark";
    case Scheme::contrastLight:
      return "contrast on light";
    case Scheme::contrastDark:
      return "contrast on dark";
  }
  return {};
}

bool isHighContrast(Scheme scheme) {
  return scheme == Scheme::contrastLight || scheme == Scheme::contrastDark;
}

QPalette desktop(QColor ground, QColor text, QColor button) {
  QPalette palette;
  palette.setColor(QPalette::Window, ground);
  palette.setColor(QPalette::WindowText, text);
  palette.setColor(QPalette::Button, button);
  palette.setColor(QPalette::ButtonText, text);
  return palette;
}

}  // namespace

class BoardPaletteTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void knowsTheEndsOfContrast();
  void everyPairIsFarEnoughApart_data();
  void everyPairIsFarEnoughApart();
  void practiceCanBeRead_data() { everyPairIsFarEnoughApart_data(); }
  void practiceCanBeRead();
  void practiceIsAnotherPlace_data() { addSchemes(); }
  void practiceIsAnotherPlace();
  void theBandCanBeRead_data() { addSchemes(); }
  void theBandCanBeRead();
  void fieldsOfPracticeCanBeRead_data() { addSchemes(); }
  void fieldsOfPracticeCanBeRead();
  void flagsCanBeRead_data();
  void flagsCanBeRead();
  void onlySafeIsGreen();
  void followsTheDesktop();
  void followsAThemeNamedInTheEnvironment();

 private:
  static void addSchemes() {
    QTest::addColumn<Scheme>("scheme");
    for (const Scheme scheme : allSchemes) QTest::addRow("%s", nameOf(scheme).constData()) << scheme;
  }
};

void BoardPaletteTest::init() { qunsetenv("GTK_THEME"); }

void BoardPaletteTest::knowsTheEndsOfContrast() {
  QCOMPARE(contrastRatio(Qt::black, Qt::white), 21.0);
  QCOMPARE(contrastRatio(Qt::red, Qt::red), 1.0);
  // Middle grey on white. Source: the formula of WCAG 2.2 worked by hand: 1.05 / 0.2659.
  QVERIFY(qAbs(contrastRatio(QColor(0x80, 0x80, 0x80), Qt::white) - 3.949) < 0.001);
}

void BoardPaletteTest::everyPairIsFarEnoughApart_data() {
  QTest::addColumn<Scheme>("scheme");
  QTest::addColumn<int>("pair");
  for (const Scheme scheme : allSchemes)
    for (int i = 0; i < static_cast<int>(std::size(pairs)); ++i)
      QTest::addRow("%s: %s", nameOf(scheme).constData(), pairs[i].name) << scheme << i;
}

void BoardPaletteTest::everyPairIsFarEnoughApart() {
  QFETCH(Scheme, scheme);
  QFETCH(int, pair);
  const Pair& wanted = pairs[pair];
  const BoardPalette& palette = boardPalette(scheme);
  const double found = contrastRatio(palette[wanted.ink], palette[wanted.ground]);
  QVERIFY2(found >= wanted.least, qPrintable(QString::number(found)));
  if (isHighContrast(scheme) && wanted.least == textContrast)
    QVERIFY2(found >= enhancedContrast, qPrintable(QString::number(found)));
}

void BoardPaletteTest::practiceCanBeRead() {
  QFETCH(Scheme, scheme);
  QFETCH(int, pair);
  const Pair& wanted = pairs[pair];
  const BoardPalette& palette = practicePalette(scheme);
  const double found = contrastRatio(palette[wanted.ink], palette[wanted.ground]);
  QVERIFY2(found >= wanted.least, qPrintable(QString::number(found)));
}

/// By its ground where colours may say something, by its band everywhere.
void BoardPaletteTest::practiceIsAnotherPlace() {
  QFETCH(Scheme, scheme);
  const QColor ground = practicePalette(scheme)[Ink::board];
  QCOMPARE(ground == boardPalette(scheme)[Ink::board], isHighContrast(scheme));
  QVERIFY(contrastRatio(bandColours(scheme).ground, ground) > 1.5);
}

void BoardPaletteTest::theBandCanBeRead() {
  QFETCH(Scheme, scheme);
  const BandColours band = bandColours(scheme);
  const double least = isHighContrast(scheme) ? enhancedContrast : textContrast;
  QVERIFY(contrastRatio(band.ink, band.ground) >= least);
  QVERIFY(contrastRatio(band.ink, band.stripe) >= least);
  QVERIFY(band.stripe != band.ground);
}

void BoardPaletteTest::fieldsOfPracticeCanBeRead() {
  QFETCH(Scheme, scheme);
  const bool dark = scheme == Scheme::dark || scheme == Scheme::contrastDark;
  const QColor ground = isHighContrast(scheme) ? QColor(dark ? Qt::black : Qt::white)
                        : dark                 ? QColor(0x2d, 0x2d, 0x2d)
                                               : QColor(0xef, 0xef, 0xef);
  const QPalette own = practiceWidgets(desktop(ground, dark ? Qt::white : Qt::black, ground));
  for (const auto& [ink, on] :
       {std::pair{QPalette::WindowText, QPalette::Window}, std::pair{QPalette::ButtonText, QPalette::Button}})
    QVERIFY(contrastRatio(own.color(ink), own.color(on)) >= textContrast);
  QCOMPARE(schemeFor(own), scheme);
}

void BoardPaletteTest::flagsCanBeRead_data() {
  QTest::addColumn<Scheme>("scheme");
  QTest::addColumn<VerdictKind>("verdict");
  for (const Scheme scheme : allSchemes)
    for (const VerdictKind verdict : {VerdictKind::safe, VerdictKind::ask, VerdictKind::unsafe,
                                      VerdictKind::notCovered, VerdictKind::undecided})
      QTest::addRow("%s: %s", nameOf(scheme).constData(), idOf(verdict).data()) << scheme << verdict;
}

void BoardPaletteTest::flagsCanBeRead() {
  QFETCH(Scheme, scheme);
  QFETCH(VerdictKind, verdict);
  const FlagColours colours = flagColours(verdict, scheme);
  const double found = contrastRatio(colours.ink, colours.fill);
  const double least = isHighContrast(scheme) ? enhancedContrast : textContrast;
  QVERIFY2(found >= least, qPrintable(QString::number(found)));
}

void BoardPaletteTest::onlySafeIsGreen() {
  for (const Scheme scheme : allSchemes)
    for (const VerdictKind verdict : {VerdictKind::safe, VerdictKind::ask, VerdictKind::unsafe,
                                      VerdictKind::notCovered, VerdictKind::undecided}) {
      const QColor fill = flagColours(verdict, scheme).fill;
      const bool green = fill.saturation() > 80 && fill.hue() > 90 && fill.hue() < 180;
      QCOMPARE(green, verdict == VerdictKind::safe);
    }
}

void BoardPaletteTest::followsTheDesktop() {
  const QColor pale(0xef, 0xef, 0xef);
  const QColor deep(0x2b, 0x2b, 0x2b);
  QCOMPARE(schemeFor(desktop(pale, Qt::black, pale)), Scheme::light);
  QCOMPARE(schemeFor(desktop(deep, Qt::white, deep)), Scheme::dark);
  QCOMPARE(schemeFor(desktop(Qt::white, Qt::black, Qt::white)), Scheme::contrastLight);
  QCOMPARE(schemeFor(desktop(Qt::black, Qt::white, Qt::black)), Scheme::contrastDark);
  QCOMPARE(schemeFor(desktop(Qt::white, Qt::black, pale)), Scheme::light);
}

void BoardPaletteTest::followsAThemeNamedInTheEnvironment() {
  qputenv("GTK_THEME", "HighContrastInverse");
  QCOMPARE(schemeFor(desktop(QColor(0x20, 0x20, 0x20), Qt::white, QColor(0x30, 0x30, 0x30))),
           Scheme::contrastDark);
}

WARDCHALK_QT_TEST(BoardPaletteTest)

}  // namespace wardchalk::ui::test::board_palette_test

#include "board_palette_test.moc"
