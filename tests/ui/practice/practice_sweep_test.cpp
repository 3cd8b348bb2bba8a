#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMainWindow>
#include <QMenuBar>
#include <QRadioButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTest>

#include "tests/ui/practice/pupil.h"
#include "tests/ui/support/qt_class.h"
#include "ui/practice/line_builder.h"
#include "ui/practice/line_row.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/contrast.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui::practice_sweep_test {

namespace {

/// A page of practice, and how a student comes to it.
struct Page {
  const char* name;
  void (*reach)(Pupil&);
};

void toProblem(Pupil& pupil) {
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa"), QStringLiteral("bsa")}, 3, 5));
}

void toHint(Pupil& pupil) {
  toProblem(pupil);
  pupil.write(0, QStringLiteral("0.46 m²"));
  pupil.enter();
  for (int i = 0; i < lastRung; ++i) pupil.press(Qt::Key_H, Qt::ControlModifier);
}

/// The second line of a problem, after the first was right.
void toSecondLine(Pupil& pupil) {
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 2, 5));
  pupil.write(0, pupil.right(0));
  pupil.enter();
}

/// With the worked lines under what was not right.
void toHandedIn(Pupil& pupil) {
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 2, 5));
  pupil.write(0, QStringLiteral("0.46 m²"));
  for (int i = 0; i < 2; ++i) pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY(pupil.session().current().handedIn);
}

void toTest(Pupil& pupil) { QVERIFY(pupil.begin({QStringLiteral("dose-by-weight")}, 2, 5, true)); }

void toReview(Pupil& pupil) {
  toTest(pupil);
  pupil.write(0, QStringLiteral("17.2 kg × 5 mg/kg = 86 mg"));
  QVERIFY(pupil.push(QStringLiteral("review")));
}

void toSummary(Pupil& pupil) {
  QVERIFY(
      pupil.begin({QStringLiteral("bsa"), QStringLiteral("amount-liquid"), QStringLiteral("drops")}, 3, 5));
  for (int problem = 0; problem < 3; ++problem) {
    const std::size_t lines = pupil.session().current().lines.size();
    for (std::size_t i = 0; i < lines; ++i) {
      if (i > 0 || problem == 1) {
        pupil.write(i, pupil.right(i));
      } else {
        const QString right = pupil.right(i);
        const double tenfold = right.section(u' ', 0, 0).remove(u',').toDouble() * 10;
        pupil.write(i, QString::number(tenfold) + u' ' + right.section(u' ', 1));
      }
      pupil.enter();
    }
    for (int presses = 0; presses < 3 && pupil.isOn("problem-page") &&
                          pupil.session().place() == static_cast<std::size_t>(problem);
         ++presses)
      pupil.press(Qt::Key_Return, Qt::ControlModifier);
  }
  QVERIFY(pupil.isOn("summary-page"));
}

/// A teacher's set with everything that it may fix.
void toClass(Pupil& pupil) {
  pupil.files().open = pupil.inFolder(QStringLiteral("class.json"));
  QFile file(pupil.files().open);
  QVERIFY(file.open(QIODevice::WriteOnly));
  file.write(
      R"({"format": "wardchalk.set", "version": 1, "title": "Week 3: doses by body surface", "seed": 9007199254740991,
"topics": ["bsa", "dose-by-bsa", "amount-liquid"], "level": 2, "count": 12, "builder": false, "minutes": 30,
"wants_units": true, "wants_reason": true, "rules": {"pounds": "trade"}})");
  file.close();
  QVERIFY(pupil.push(QStringLiteral("open-set")));
  QVERIFY(pupil.isOn("class-page"));
  QVERIFY(pupil.walkTo(QStringLiteral("seat")));
  pupil.type(QStringLiteral("A7"));
}

/// A sheet of a class under way, with its seat and its time.
void toSheet(Pupil& pupil) {
  toClass(pupil);
  pupil.enter();
  QVERIFY(pupil.isOn("problem-page"));
}

void toSet(Pupil& pupil) { QVERIFY(pupil.push(QStringLiteral("make-set"))); }

const Page pages[] = {
    {"plan", [](Pupil&) {}},   {"problem", toProblem}, {"second-line", toSecondLine},
    {"handed-in", toHandedIn}, {"hint", toHint},       {"test", toTest},
    {"review", toReview},      {"summary", toSummary}, {"set", toSet},
    {"class", toClass},        {"sheet", toSheet},
};

QString nameOf(const QWidget* widget) {
  if (!widget->accessibleName().isEmpty()) return widget->accessibleName();
  if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) return button->text();
  if (const auto* spoken = qobject_cast<const SpokenWidget*>(widget)) return spoken->spoken();
  return {};
}

QString mnemonicOf(const QString& text) {
  const qsizetype at = text.indexOf(u'&');
  return at < 0 || at + 1 == text.size() ? QString() : text.mid(at + 1, 1).toLower();
}

struct Desktop {
  const char* name;
  QRgb ground, base, button, text;
};
constexpr std::array desktops = {
    Desktop{"light", 0xffefefef, 0xffffffff, 0xffe6e6e6, 0xff000000},
    Desktop{"dark", 0xff2d2d2d, 0xff1f1f1f, 0xff3a3a3a, 0xffeeeeee},
    Desktop{"contrast-light", 0xffffffff, 0xffffffff, 0xffffffff, 0xff000000},
    Desktop{"contrast-dark", 0xff000000, 0xff000000, 0xff000000, 0xffffffff},
};

QPalette paletteOf(const Desktop& desktop) {
  QPalette palette(QColor(desktop.button), QColor(desktop.ground));
  palette.setColor(QPalette::Base, QColor(desktop.base));
  for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(role, QColor(desktop.text));
  return palette;
}

/// What is filled in or pressed, but for the field within a box for numbers.
bool isPressed(const QWidget* widget) {
  return (qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QComboBox*>(widget) ||
          qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QSpinBox*>(widget)) &&
         !qobject_cast<const QSpinBox*>(widget->parentWidget());
}

/// How far the edge at the left of a widget stands out from what lies before it.
double edgeContrast(const QWidget& widget, const QImage& window) {
  constexpr int before = 1, within = 10;
  const QPoint at = widget.mapTo(widget.window(), QPoint(0, widget.height() / 2));
  const QColor ground = window.pixelColor(at.x() - before, at.y());
  double most = 1;
  for (int x = 0; x < within; ++x)
    most = std::max(most, contrastRatio(window.pixelColor(at.x() + x, at.y()), ground));
  return most;
}

}  // namespace

/// Every widget of every page of practice is looked at.
class PracticeSweepTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void everythingHasAName_data() { addPages(); }
  void everythingHasAName();
  void everyFieldHasALabelThatLeadsToIt_data() { addPages(); }
  void everyFieldHasALabelThatLeadsToIt();
  void tabReachesEverything_data() { addPages(); }
  void tabReachesEverything();
  void noTwoMnemonicsAreAlike_data() { addPages(); }
  void noTwoMnemonicsAreAlike();
  void nothingIsCutOff_data() { addPagesAndZooms(); }
  void nothingIsCutOff();
  void whatIsPressedIsHighEnough_data() { addPages(); }
  void whatIsPressedIsHighEnough();
  void everyEdgeIsSeen_data();
  void everyEdgeIsSeen();
  void whatIsOffLooksSo_data();
  void whatIsOffLooksSo();
  void followsTheDesktopsColours_data() { addPages(); }
  void followsTheDesktopsColours();
  void boxesGrowWithTheLetters();
  void theBandStandsOnTopOfEveryPage_data() { addPages(); }
  void theBandStandsOnTopOfEveryPage();
  void noWardCaseIsReachedFromHere();
  void shoots_data();
  void shoots();
  void cleanup() { QApplication::setPalette(before_); }

 private:
  static void addPages() {
    QTest::addColumn<int>("page");
    for (int i = 0; i < static_cast<int>(std::size(pages)); ++i) QTest::newRow(pages[i].name) << i;
  }
  static void addPagesAndZooms() {
    QTest::addColumn<int>("page");
    QTest::addColumn<int>("zoom");
    for (const int zoom : {100, 200})
      for (int i = 0; i < static_cast<int>(std::size(pages)); ++i)
        QTest::addRow("%s at %d %%", pages[i].name, zoom) << i << zoom;
  }
  static void reach(Pupil& pupil) {
    QFETCH(int, page);
    pages[page].reach(pupil);
    QCoreApplication::processEvents();
  }

  QPalette before_ = QApplication::palette();
};

void PracticeSweepTest::everythingHasAName() {
  Pupil pupil;
  reach(pupil);
  int seen = 0;
  for (const QWidget* widget : pupil.window().findChildren<QWidget*>()) {
    if (!widget->isVisible() || !(widget->focusPolicy() & Qt::TabFocus)) continue;
    if (qobject_cast<const QLineEdit*>(widget) && qobject_cast<const QSpinBox*>(widget->parentWidget()))
      continue;
    if (widget->focusProxy()) continue;
    ++seen;
    QVERIFY2(!nameOf(widget).isEmpty(), qPrintable(widget->objectName()));
    QVERIFY2(!widget->objectName().isEmpty(), qPrintable(nameOf(widget)));
  }
  QVERIFY(seen >= 3);  // a review of two problems has three: change one, change the other, hand in
}

void PracticeSweepTest::everyFieldHasALabelThatLeadsToIt() {
  Pupil pupil;
  reach(pupil);
  QList<const QWidget*> led;
  for (const QLabel* label : pupil.window().findChildren<QLabel*>())
    if (label->isVisible() && label->buddy()) led << label->buddy();
  for (const QWidget* widget : pupil.window().findChildren<QWidget*>()) {
    const bool field = qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QComboBox*>(widget) ||
                       qobject_cast<const QSpinBox*>(widget);
    const bool inner = qobject_cast<const QSpinBox*>(widget->parentWidget()) != nullptr;
    if (field && !inner && widget->isVisible())
      QVERIFY2(led.contains(widget), qPrintable(widget->objectName()));
  }
}

void PracticeSweepTest::tabReachesEverything() {
  Pupil pupil;
  reach(pupil);
  QSet<QWidget*> wanted;
  for (QWidget* widget : pupil.window().findChildren<QWidget*>()) {
    const auto* radio = qobject_cast<QAbstractButton*>(widget);
    const bool reachedByArrows =
        radio && radio->isCheckable() && radio->autoExclusive();  // Tab stops at one of a group
    if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) &&
        !widget->focusProxy() && !reachedByArrows && !qobject_cast<QSpinBox*>(widget->parentWidget()))
      wanted << widget;
  }
  QVERIFY(wanted.size() > 2);
  for (int steps = 0; steps < 200 && !wanted.isEmpty(); ++steps) {
    wanted.remove(QApplication::focusWidget());
    pupil.press(Qt::Key_Tab);
  }
  for (const QWidget* missed : wanted) QVERIFY2(false, qPrintable(missed->objectName()));
}

void PracticeSweepTest::noTwoMnemonicsAreAlike() {
  Pupil pupil;
  reach(pupil);
  QHash<QString, QString> seen;
  const auto check = [&seen](const QString& text) {
    const QString letter = mnemonicOf(text);
    if (letter.isEmpty()) return true;
    if (seen.contains(letter)) qWarning("%s and %s", qPrintable(seen[letter]), qPrintable(text));
    const bool alone = !seen.contains(letter);
    seen.insert(letter, text);
    return alone;
  };
  for (const QLabel* label : pupil.window().findChildren<QLabel*>())
    if (label->isVisible() && label->buddy()) QVERIFY(check(label->text()));
  for (const QAbstractButton* button : pupil.window().findChildren<QAbstractButton*>())
    if (button->isVisible()) QVERIFY(check(button->text()));
}

/// Words have the room they ask for, and what does not fit the window can be scrolled to.
void PracticeSweepTest::nothingIsCutOff() {
  QFETCH(int, zoom);
  Pupil pupil(zoom);
  reach(pupil);
  QTest::qWait(0);
  for (const QLabel* label : pupil.window().findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().isEmpty()) continue;
    if (label->wordWrap())
      QTRY_VERIFY2(label->height() >= label->heightForWidth(label->width()), qPrintable(label->text()));
    else
      QTRY_VERIFY2(label->width() >= label->minimumSizeHint().width(), qPrintable(label->text()));
  }
  for (const QAbstractButton* button : pupil.window().findChildren<QAbstractButton*>()) {
    if (!button->isVisible() || button->text().isEmpty()) continue;
    QTRY_VERIFY2(button->width() >= button->minimumSizeHint().width() &&
                     button->height() >= button->minimumSizeHint().height(),
                 qPrintable(QStringLiteral("%1: %2 × %3 of %4 × %5")
                                .arg(button->text())
                                .arg(button->width())
                                .arg(button->height())
                                .arg(button->minimumSizeHint().width())
                                .arg(button->minimumSizeHint().height())));
  }
  for (const QLineEdit* edit : pupil.window().findChildren<QLineEdit*>())
    if (edit->isVisible() && !qobject_cast<const QSpinBox*>(edit->parentWidget()))
      QTRY_VERIFY2(edit->height() >= edit->sizeHint().height(), qPrintable(edit->objectName()));
  for (const QScrollArea* scroll : pupil.window().findChildren<QScrollArea*>())
    if (scroll->isVisible() && scroll->widgetResizable() &&
        scroll->horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff)
      QVERIFY2(scroll->widget()->width() <= scroll->viewport()->width() + 1,
               qPrintable(scroll->objectName()));
  QCOMPARE(pupil.window().width(), 1366);
}

void PracticeSweepTest::whatIsPressedIsHighEnough() {
  Pupil pupil;
  reach(pupil);
  for (const QWidget* widget : pupil.window().findChildren<QWidget*>())
    if (isPressed(widget) && widget->isVisible())
      QVERIFY2(widget->height() >= 32, qPrintable(widget->objectName()));
}

void PracticeSweepTest::everyEdgeIsSeen_data() {
  QTest::addColumn<int>("page");
  QTest::addColumn<int>("desktop");
  for (int page = 0; page < static_cast<int>(std::size(pages)); ++page)
    for (int desktop = 0; desktop < static_cast<int>(desktops.size()); ++desktop)
      QTest::addRow("%s-%s", pages[page].name, desktops[static_cast<std::size_t>(desktop)].name)
          << page << desktop;
}

/// Source: WCAG 2.2, 1.4.11 (3:1). The ring of the keyboard is looked at elsewhere, so it is left out.
void PracticeSweepTest::everyEdgeIsSeen() {
  QFETCH(int, desktop);
  QApplication::setPalette(paletteOf(desktops[static_cast<std::size_t>(desktop)]));
  Pupil pupil;
  reach(pupil);
  if (QApplication::focusWidget()) QApplication::focusWidget()->clearFocus();
  QTRY_VERIFY(!QApplication::focusWidget());
  const QImage window = pupil.window().grab().toImage();
  int seen = 0;
  for (const QWidget* widget : pupil.window().findChildren<QWidget*>()) {
    const bool whole = widget->visibleRegion().boundingRect().height() == widget->height();
    if (!isPressed(widget) || !widget->isVisible() || !widget->isEnabled() || !whole) continue;
    ++seen;
    const double found = edgeContrast(*widget, window);
    QVERIFY2(found >= 3, qPrintable(widget->objectName() + QStringLiteral(": %1").arg(found)));
  }
  QVERIFY(seen > 0);
}

void PracticeSweepTest::whatIsOffLooksSo_data() {
  QTest::addColumn<int>("desktop");
  for (int desktop = 0; desktop < static_cast<int>(desktops.size()); ++desktop)
    QTest::addRow("%s", desktops[static_cast<std::size_t>(desktop)].name) << desktop;
}

/// A desktop that turns dark in the evening turns an open window dark, as if it had been opened then.
void PracticeSweepTest::followsTheDesktopsColours() {
  const auto drawn = [](Pupil& pupil) {
    if (QApplication::focusWidget()) QApplication::focusWidget()->clearFocus();
    QCoreApplication::processEvents();
    return pupil.window().grab().toImage();
  };
  QApplication::setPalette(paletteOf(desktops.front()));
  QImage opened;
  QImage followed;
  {
    Pupil pupil;
    reach(pupil);
    QApplication::setPalette(paletteOf(desktops.back()));
    QCoreApplication::processEvents();
    followed = drawn(pupil);
  }
  {
    Pupil pupil;
    reach(pupil);
    opened = drawn(pupil);
  }
  QCOMPARE(followed, opened);
}

/// The begin of practice waits for a topic; its words and its edge are fainter than those of another button.
void PracticeSweepTest::whatIsOffLooksSo() {
  QFETCH(int, desktop);
  QApplication::setPalette(paletteOf(desktops[static_cast<std::size_t>(desktop)]));
  Pupil pupil;
  const auto* off = pupil.window().findChild<QAbstractButton*>(QStringLiteral("begin"));
  const auto* on = pupil.window().findChild<QAbstractButton*>(QStringLiteral("make-set"));
  QVERIFY(!off->isEnabled() && on->isEnabled());
  const QImage window = pupil.window().grab().toImage();
  QVERIFY(edgeContrast(*off, window) < edgeContrast(*on, window) / 1.5);
  const QPalette own = pupil.window().palette();
  const auto words = [&own](QPalette::ColorGroup group) {
    return contrastRatio(own.color(group, QPalette::ButtonText), own.color(QPalette::Window));
  };
  QVERIFY(words(QPalette::Disabled) < words(QPalette::Active) / 1.5);
  QVERIFY(words(QPalette::Disabled) >= 3);
  QVERIFY(contrastRatio(own.color(QPalette::Highlight), own.color(QPalette::HighlightedText)) >= 4.5);
  QVERIFY(contrastRatio(own.color(QPalette::Highlight), own.color(QPalette::Base)) >= 3);
}

void PracticeSweepTest::boxesGrowWithTheLetters() {
  const auto sideOf = [](const QWidget* widget, QStyle::PixelMetric metric) {
    return widget->style()->pixelMetric(metric, nullptr, widget);
  };
  Pupil pupil;
  const auto* box = pupil.window().findChild<QCheckBox*>();
  const auto* radio = pupil.window().findChild<QRadioButton*>();
  const int before = sideOf(box, QStyle::PM_IndicatorWidth);
  QVERIFY(before >= box->fontMetrics().height());
  pupil.window().setZoom(200);
  QVERIFY(sideOf(box, QStyle::PM_IndicatorWidth) >= 2 * before - 2);
  QVERIFY(sideOf(radio, QStyle::PM_ExclusiveIndicatorHeight) >= 2 * before - 2);
}

void PracticeSweepTest::theBandStandsOnTopOfEveryPage() {
  Pupil pupil;
  reach(pupil);
  const auto* band = pupil.window().findChild<PracticeBand*>();
  QVERIFY(band && band->isVisible());
  QCOMPARE(band->text(), QStringLiteral("PRACTICE: invented medicines"));
  QCOMPARE(band->pos(), QPoint(0, 0));
  QCOMPARE(band->width(), pupil.window().width());
  QVERIFY(pupil.window().findChild<QLabel*>(QStringLiteral("practice-caution"))->isVisible());
}

/// H33: no menu, no case file, no sheet for the bedside.
void PracticeSweepTest::noWardCaseIsReachedFromHere() {
  Pupil pupil;
  QVERIFY(!pupil.window().findChild<QMenuBar*>());
  QVERIFY(!pupil.window().parentWidget());
  for (const QAction* action : pupil.window().findChildren<QAction*>())
    QVERIFY2(action->shortcut().isEmpty() || !action->isEnabled(), qPrintable(action->text()));
  for (const Qt::Key key : {Qt::Key_P, Qt::Key_O, Qt::Key_S, Qt::Key_N})
    pupil.press(key, Qt::ControlModifier);
  QVERIFY(pupil.files().told.isEmpty());
  QVERIFY(pupil.isOn("plan-page"));
}

void PracticeSweepTest::shoots_data() {
  QTest::addColumn<int>("page");
  QTest::addColumn<int>("desktop");
  QTest::addColumn<int>("zoom");
  for (int page = 0; page < static_cast<int>(std::size(pages)); ++page) {
    for (int desktop = 0; desktop < static_cast<int>(desktops.size()); ++desktop)
      QTest::addRow("%s-%s", pages[page].name, desktops[static_cast<std::size_t>(desktop)].name)
          << page << desktop << 100;
    QTest::addRow("%s-light-200", pages[page].name) << page << 0 << 200;
  }
}

void PracticeSweepTest::shoots() {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) QSKIP("WARDCHALK_SHOTS names no folder");
  QFETCH(int, desktop);
  QFETCH(int, zoom);
  QApplication::setPalette(paletteOf(desktops[static_cast<std::size_t>(desktop)]));
  Pupil pupil(zoom);
  reach(pupil);
  QTest::qWait(50);  // pictures are for the eye: nothing is judged by them
  QVERIFY(QDir().mkpath(folder));
  const QString name = folder + QStringLiteral("/practice-") + QLatin1String(QTest::currentDataTag());
  QVERIFY(pupil.window().grab().save(name + QStringLiteral(".png")));
  QFETCH(int, page);
  if (QLatin1String(pages[page].name) != QLatin1String("problem")) return;
  const Problem& problem = pupil.session().current().problem;
  LineBuilder builder(problem.asks.front(), problem, zoom / 100.0, &pupil.window());
  builder.show();
  auto* facts = builder.findChild<QListWidget*>();
  for (int i = 0; i < 2; ++i) {
    facts->setCurrentRow(qMin(i * 2, facts->count() - 1));
    QTest::keyClick(facts, Qt::Key_Return);
  }
  QTest::qWait(50);
  QVERIFY(builder.grab().save(name + QStringLiteral("-builder.png")));
}

WARDCHALK_QT_TEST(PracticeSweepTest)

}  // namespace wardchalk::ui::practice_sweep_test

#include "practice_sweep_test.moc"
