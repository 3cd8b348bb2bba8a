#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTest>
#include <functional>

#include "tests/support/golden_cases.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/desktops.h"
#include "tests/ui/support/geometry.h"
#include "tests/ui/support/ink.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/field_edit.h"
#include "ui/form/form.h"
#include "ui/practice/practice_window.h"
#include "ui/shell/practice_desk.h"
#include "ui/shell/sides.h"
#include "ui/theme/letters.h"
#include "ui/theme/surface.h"
#include "ui/working/amount_widget.h"
#include "ui/working/flag_widget.h"
#include "ui/working/step_card.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::narrow_window_test {

namespace {

struct Screen {
  int width;
  int height;
};
constexpr std::array screens = {Screen{800, 600}, Screen{1024, 768}, Screen{1366, 768}, Screen{1920, 1080}};

QString cutInWorking(const WorkingPane& pane) {
  for (const Run& run : pane.flag()->drawing().runs)
    if (!QRectF(pane.flag()->rect()).contains(test::inkOf(run))) return run.text;
  for (const StepCard* card : pane.cards())
    for (const Run& run : card->layout().drawing.runs)
      if (!QRectF(card->rect()).contains(test::inkOf(run))) return run.text;
  return {};
}

}  // namespace

/// A narrow window and large letters: one column, nothing cut, what was chosen is remembered.
class NarrowWindowTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() { nurse_ = std::make_unique<Nurse>(); }
  void cleanup() { nurse_.reset(); }

  void columnsFollowWidthAndLetters_data();
  void columnsFollowWidthAndLetters();
  void nothingIsCut_data();
  void nothingIsCut();
  void flagAndAmountStayInView_data();
  void flagAndAmountStayInView();
  void aFieldStaysWhereOneTypes_data();
  void aFieldStaysWhereOneTypes();
  void whatHasTheKeyboardIsSeen();
  void aNewColumnReadsNothingAndKeepsTheKeyboard();
  void theKeyboardGoesAsTheEyeDoes();
  void theEmptyColumnSaysWhatToEnter();
  void theColumnKeepsTheSurfaceOfTheForm_data();
  void theColumnKeepsTheSurfaceOfTheForm();
  void everyWindowFollowsTheTextSize();
  void largerAndBackIsAsBefore();
  void textSizeAndEdgeAreRemembered();
  void theEdgeIsMovedByKeys_data();
  void theEdgeIsMovedByKeys();
  void inOneColumnThereIsNoEdge();
  void aDamagedEdgeLeavesRoomForBoth_data();
  void aDamagedEdgeLeavesRoomForBoth();

 private:
  MainWindow& window() { return nurse_->window(); }
  Sides& sides() { return *window().findChild<Sides*>(); }
  Form& form() { return *window().findChild<Form*>(); }
  WorkingPane& pane() { return *window().findChild<WorkingPane*>(); }
  QScrollArea& column() { return *pane().flag()->parentWidget()->findChild<QScrollArea*>(); }
  void open(const char* golden) {
    QVERIFY(window().openFile(QString::fromStdString(
        (wardchalk::test::goldenFolder() / (std::string(golden) + ".case.json")).string())));
  }
  void show(int width, int height, int percent) {
    while (QApplication::font().pointSizeF() * 100 < desktopFont().pointSizeF() * percent - 1)
      nurse_->press(Qt::Key_Plus, Qt::ControlModifier);
    window().resize(width, height);
    settle();
  }
  static void settle() {
    for (int rounds = 0; rounds < 6; ++rounds) QCoreApplication::processEvents();
  }

  std::unique_ptr<Nurse> nurse_;
};

void NarrowWindowTest::columnsFollowWidthAndLetters_data() {
  QTest::addColumn<int>("width");
  QTest::addColumn<int>("percent");
  QTest::addColumn<bool>("one");
  QTest::newRow("usual") << 1366 << 100 << false;
  QTest::newRow("just wide enough") << 900 << 100 << false;
  QTest::newRow("just too narrow") << 899 << 100 << true;
  QTest::newRow("small") << 800 << 100 << true;
  QTest::newRow("1024") << 1024 << 100 << false;
  QTest::newRow("1024, larger") << 1024 << 120 << true;
  QTest::newRow("1024, twice") << 1024 << 200 << true;
  QTest::newRow("usual, larger") << 1366 << 150 << false;
  QTest::newRow("usual, larger still") << 1366 << 160 << true;
  QTest::newRow("usual, twice") << 1366 << 200 << true;
  QTest::newRow("wide, twice") << 1920 << 200 << false;
}

void NarrowWindowTest::columnsFollowWidthAndLetters() {
  QFETCH(int, width);
  QFETCH(int, percent);
  QFETCH(bool, one);
  show(width, 768, percent);
  QCOMPARE(window().width(), width);
  QCOMPARE(sides().isOneColumn(), one);
  QCOMPARE(pane().isAncestorOf(&form()), one);
  show(1366, 768, percent);
  window().resize(width, 768);  // and there again
  settle();
  QCOMPARE(sides().isOneColumn(), one);
}

void NarrowWindowTest::nothingIsCut_data() {
  QTest::addColumn<int>("width");
  QTest::addColumn<int>("height");
  QTest::addColumn<int>("percent");
  QTest::addColumn<QString>("golden");
  QTest::addColumn<bool>("unfolded");
  for (const Screen& screen : screens)
    for (const int percent : {100, 130, 150, 200})
      for (const char* golden : {"safe-per-surface-liquid", "ask-below-usual", "household-powder-surface"})
        for (const bool unfolded : {false, true})
          QTest::addRow("%dx%d at %d, %s%s", screen.width, screen.height, percent, golden,
                        unfolded ? ", unfolded" : "")
              << screen.width << screen.height << percent << QString::fromLatin1(golden) << unfolded;
  // 320 at the usual letters (source: WCAG 2.2, 1.4.10)
  for (const char* golden : {"safe-per-surface-liquid", "ask-below-usual", "household-powder-surface",
                             "ask-two-slips-surface", "unsafe-as-prepared", "not-covered-age"})
    for (const int percent : {100, 200})
      for (const bool unfolded : {false, true})
        QTest::addRow("320 wide at %d, %s%s", percent, golden, unfolded ? ", unfolded" : "")
            << 320 * percent / 100 << 600 << percent << QString::fromLatin1(golden) << unfolded;
}

void NarrowWindowTest::nothingIsCut() {
  QFETCH(int, width);
  QFETCH(int, height);
  QFETCH(int, percent);
  QFETCH(QString, golden);
  QFETCH(bool, unfolded);
  open(golden.toLatin1().constData());
  if (width < 420) show(700, height, percent);  // as a hand draws it: one column first, then narrower
  show(width, height, percent);
  form().setUnfolded(unfolded);
  settle();
  QCOMPARE(window().size(), QSize(width, height));
  QTRY_COMPARE(test::cut(window()), QString());
  QTRY_COMPARE(test::sideways(window()), QString());
  QCOMPARE(cutInWorking(pane()), QString());
  form().focusField(QStringLiteral("order.dose"));
  nurse_->type(QStringLiteral("15 mg/kg"));  // per dose or per day: asked with two buttons
  nurse_->enter();
  settle();
  QTRY_COMPARE(test::cut(window()), QString());
  QTRY_COMPARE(test::sideways(window()), QString());
}

void NarrowWindowTest::flagAndAmountStayInView_data() {
  QTest::addColumn<int>("width");
  QTest::addColumn<int>("height");
  QTest::addColumn<int>("percent");
  QTest::newRow("800x600") << 800 << 600 << 100;
  QTest::newRow("800x600 at 200") << 800 << 600 << 200;
  QTest::newRow("1024x768 at 200") << 1024 << 768 << 200;
  QTest::newRow("1366x768 at 200") << 1366 << 768 << 200;
}

void NarrowWindowTest::flagAndAmountStayInView() {
  QFETCH(int, width);
  QFETCH(int, height);
  QFETCH(int, percent);
  open("safe-per-surface-liquid");
  show(width, height, percent);
  QVERIFY(sides().isOneColumn());
  QVERIFY(pane().amount()->showsAmount());
  QScrollBar* bar = column().verticalScrollBar();
  QVERIFY(bar->maximum() > 0);
  for (int value = 0; value <= bar->maximum(); value += std::max(1, bar->maximum() / 5)) {
    bar->setValue(value);
    settle();
    for (QWidget* part : {static_cast<QWidget*>(pane().flag()), static_cast<QWidget*>(pane().amount())})
      QCOMPARE(part->visibleRegion().boundingRect(), part->rect());
  }
}

void NarrowWindowTest::aFieldStaysWhereOneTypes_data() { flagAndAmountStayInView_data(); }

/// Flag and amount come and go above the field: it stays, unless it would not be seen.
void NarrowWindowTest::aFieldStaysWhereOneTypes() {
  QFETCH(int, width);
  QFETCH(int, height);
  QFETCH(int, percent);
  show(width, height, percent);
  int letters = 0;
  for (const QString& entry : test::usualCase()) {
    for (const QChar letter : entry) {
      const QWidget* line = QApplication::focusWidget();
      const int before = line->mapTo(&window(), QPoint()).y();
      nurse_->type(QString(letter));
      settle();
      QCOMPARE(QApplication::focusWidget(), line);
      const int after = line->mapTo(&window(), QPoint()).y();
      const bool atTheTop = after <= column().mapTo(&window(), QPoint()).y() + line->height();
      QVERIFY2(before == after || atTheTop,
               qPrintable(QStringLiteral("%1 from %2 to %3").arg(line->objectName()).arg(before).arg(after)));
      QCOMPARE(line->visibleRegion().boundingRect(), line->rect());
      ++letters;
    }
    nurse_->enter();
    settle();
  }
  QVERIFY(letters > 40);
  QVERIFY(pane().amount()->showsAmount());
}

void NarrowWindowTest::whatHasTheKeyboardIsSeen() {
  open("safe-per-surface-liquid");
  show(800, 600, 200);
  form().focusTop();
  QSet<QWidget*> seen;
  for (int steps = 0; steps < 60; ++steps) {
    QWidget* at = QApplication::focusWidget();
    settle();
    QVERIFY2(!at->visibleRegion().isEmpty(), qPrintable(at->objectName()));
    seen << at;
    QTest::keyClick(at, Qt::Key_Tab);
  }
  QVERIFY(seen.size() > 30);
}

void NarrowWindowTest::aNewColumnReadsNothingAndKeepsTheKeyboard() {
  show(1366, 768, 100);
  nurse_->type(QStringLiteral("10"));
  auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  line->setSelection(1, 1);
  for (const int width : {800, 1366}) {
    window().resize(width, 768);
    settle();
    QCOMPARE(sides().isOneColumn(), width == 800);
    QCOMPARE(QApplication::focusWidget(), line);
    QCOMPARE(line->text(), QStringLiteral("10"));
    QCOMPARE(line->selectedText(), QStringLiteral("0"));
    QCOMPARE(window().editor().draft().state("child.height"), FieldState::pending);
  }
  nurse_->type(QStringLiteral("03 cm"));
  QCOMPARE(line->text(), QStringLiteral("103 cm"));
}

void NarrowWindowTest::theKeyboardGoesAsTheEyeDoes() {
  open("safe-per-surface-liquid");
  for (const int width : {800, 1366, 800}) {
    show(width, 768, 100);
    const bool one = width == 800;
    form().focusTop();
    const QWidget* first = QApplication::focusWidget();
    nurse_->press(Qt::Key_Backtab, Qt::ShiftModifier);  // the button in the heading
    QVERIFY(form().isAncestorOf(QApplication::focusWidget()));
    nurse_->press(Qt::Key_Backtab, Qt::ShiftModifier);
    QCOMPARE(pane().amount()->isAncestorOf(QApplication::focusWidget()), one);
    for (int i = 0; i < 2; ++i) nurse_->press(Qt::Key_Tab);
    QCOMPARE(QApplication::focusWidget(), first);
    nurse_->press(Qt::Key_F6);
    QCOMPARE(QApplication::focusWidget(), pane().flag());
    nurse_->press(Qt::Key_F6);
    QCOMPARE(QApplication::focusWidget(), first);
    nurse_->press(Qt::Key_F7);
    QCOMPARE(QApplication::focusWidget(), pane().flag());
    int before = 0;  // stops of the form between the flag and the first step
    while (QApplication::focusWidget() != pane().cards().front() && before < 200) {
      before += form().isAncestorOf(QApplication::focusWidget()) ? 1 : 0;
      nurse_->press(Qt::Key_Tab);
    }
    QVERIFY2(one ? before > 15 && before < 200 : before == 0, qPrintable(QString::number(before)));
  }
}

void NarrowWindowTest::theEmptyColumnSaysWhatToEnter() {
  show(800, 600, 100);
  QVERIFY(pane().flag()->isVisible());
  auto* example = pane().findChild<QWidget*>(QStringLiteral("example"));
  QVERIFY(example->isVisible());
  QVERIFY(example->mapTo(&window(), QPoint()).y() > form().mapTo(&window(), QPoint()).y() + form().height());
  example->setFocus(Qt::TabFocusReason);
  nurse_->press(Qt::Key_Space);
  QVERIFY(pane().amount()->showsAmount());
  QVERIFY(!example->isVisible());
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  settle();
  QVERIFY(example->isVisible());
  QVERIFY(pane().cards().empty());
  QVERIFY(!pane().amount()->showsAmount());
}

void NarrowWindowTest::theColumnKeepsTheSurfaceOfTheForm_data() {
  QTest::addColumn<int>("at");
  for (std::size_t i = 0; i < desktops.size(); ++i) QTest::newRow(desktops[i].name) << static_cast<int>(i);
}

/// Also when the desktop changes while the window is narrow, and when it is wide again.
void NarrowWindowTest::theColumnKeepsTheSurfaceOfTheForm() {
  QFETCH(int, at);
  const QPalette before = QApplication::palette();
  show(800, 600, 100);
  QApplication::setPalette(paletteOf(desktops[static_cast<std::size_t>(at)]));
  settle();
  const QColor surface = surfacePalette(QApplication::palette()).color(QPalette::Window);
  const auto beside = [&] { return form().grab().toImage().pixelColor(4, form().height() / 2); };
  const QColor inColumn = beside();
  show(1366, 768, 100);
  const QColor wide = beside();
  const Scheme scheme = schemeFor(pane().palette());
  QApplication::setPalette(before);
  QCOMPARE(inColumn, surface);
  QCOMPARE(wide, surface);
  QCOMPARE(scheme, desktops[static_cast<std::size_t>(at)].scheme);
}

void NarrowWindowTest::everyWindowFollowsTheTextSize() {
  const auto high = [](const QWidget* one) { return one->fontMetrics().height(); };
  nurse_->press(Qt::Key_F12);
  PracticeWindow* practice = window().findChild<PracticeDesk*>()->window();
  QVERIFY(nurse_->goBack());
  const auto* caution = window().findChild<QLabel*>(QStringLiteral("caution"));
  const auto* label = window().findChild<QLabel*>(QStringLiteral("child.height:label"));
  const auto* quiet = window().findChild<QLabel*>(QStringLiteral("child.height:line"));
  QWidget* menu = window().findChild<QWidget*>(QStringLiteral("file"));
  QVERIFY(menu);
  const QList<const QWidget*> parts{caution, label, quiet, menu, practice};
  QList<int> before;
  for (const QWidget* one : parts) before << high(one);
  show(1366, 768, 200);
  for (qsizetype i = 0; i < parts.size(); ++i)
    QVERIFY2(high(parts[i]) >= 2 * before[i] - 3, qPrintable(parts[i]->objectName()));
  QVERIFY(practice->isVisible());
  practice->activateWindow();
  QVERIFY(hasKeyboard(practice));
  QTest::keyClick(practice, Qt::Key_0, Qt::ControlModifier);
  settle();
  for (qsizetype i = 0; i < parts.size(); ++i) QCOMPARE(high(parts[i]), before[i]);
  QCOMPARE(pane().zoom(), 100);
}

void NarrowWindowTest::largerAndBackIsAsBefore() {
  show(1366, 768, 100);
  open("safe-per-surface-liquid");
  settle();
  const auto places = [&] {
    QStringList all;
    for (const QWidget* one : window().findChildren<QWidget*>())
      if (one->isVisible() && !one->objectName().isEmpty())
        all << one->objectName() + test::described(QRectF(one->mapTo(&window(), QPoint()), one->size()));
    all.sort();
    all << QString::number(pane().findChild<QScrollArea*>()->verticalScrollBar()->value());
    return all;
  };
  const QStringList before = places();
  show(1366, 768, 200);
  QVERIFY(places() != before);
  pane().findChild<QScrollArea*>()->verticalScrollBar()->setValue(200);  // over the form, not over the steps
  nurse_->press(Qt::Key_0, Qt::ControlModifier);
  settle();
  QTRY_COMPARE(places(), before);
}

void NarrowWindowTest::textSizeAndEdgeAreRemembered() {
  Settings settings(nurse_->folder() + QStringLiteral("/other.ini"));
  {
    MainWindow first(exactRules(), settings, nurse_->dialogs());
    first.resize(1366, 768);
    first.show();
    QVERIFY(QTest::qWaitForWindowExposed(&first));
    auto* edge = first.findChild<QSplitter*>();
    QTest::mousePress(edge->handle(1), Qt::LeftButton, {}, QPoint(1, 100));
    QTest::mouseMove(edge->handle(1), QPoint(121, 100));
    QTest::mouseRelease(edge->handle(1), Qt::LeftButton, {}, QPoint(1, 100));
    QVERIFY(first.findChild<Form*>()->width() > 560);
    first.findChild<QAction*>(QStringLiteral("zoom-in"))->trigger();
    QVERIFY(first.close());
  }
  const int kept = settings.formWidth();
  QVERIFY(kept > 560);
  QCOMPARE(settings.textSize(), 110);
  MainWindow again(exactRules(), settings, nurse_->dialogs());
  again.resize(1366, 768);
  again.show();
  QVERIFY(QTest::qWaitForWindowExposed(&again));
  QCOMPARE(again.findChild<Form*>()->width(), kept);
  QCOMPARE(again.findChild<WorkingPane*>()->zoom(), 110);
  QVERIFY(QApplication::font().pointSizeF() > desktopFont().pointSizeF() * 1.05);
}

void NarrowWindowTest::theEdgeIsMovedByKeys_data() {
  QTest::addColumn<int>("percent");
  for (const int percent : {100, 150}) QTest::addRow("%d %%", percent) << percent;
}

/// As far as the mouse can draw it, and the keyboard stays where it was.
void NarrowWindowTest::theEdgeIsMovedByKeys() {
  QFETCH(int, percent);
  open("safe-per-surface-liquid");
  show(1920, 1080, percent);
  const QWidget* typed = QApplication::focusWidget();
  const auto wide = [this] { return form().width(); };
  const auto wider = [this] { nurse_->press(Qt::Key_F6, Qt::ShiftModifier); };
  const auto narrower = [this] { nurse_->press(Qt::Key_F6, Qt::ControlModifier); };
  const int usual = wide();
  wider();
  const int step = wide() - usual;
  QVERIFY2(step >= 40, qPrintable(QString::number(step)));
  narrower();
  QCOMPARE(wide(), usual);
  for (const auto& press : {std::function<void()>(narrower), std::function<void()>(wider)}) {
    for (int presses = 0; presses < 60; ++presses) press();
    const int end = wide();
    press();
    QCOMPARE(wide(), end);
    QTRY_COMPARE(test::cut(window()), QString());
    QTRY_COMPARE(test::sideways(window()), QString());
  }
  QVERIFY(wide() > usual && pane().width() >= 400);
  QCOMPARE(QApplication::focusWidget(), typed);
}

void NarrowWindowTest::inOneColumnThereIsNoEdge() {
  show(800, 600, 100);
  const QRect before = form().geometry();
  nurse_->press(Qt::Key_F6, Qt::ShiftModifier);
  nurse_->press(Qt::Key_F6, Qt::ControlModifier);
  nurse_->press(Qt::Key_F6, Qt::ControlModifier);
  QCOMPARE(form().geometry(), before);
  show(1366, 768, 100);
  QCOMPARE(form().width(), 480);
}

void NarrowWindowTest::aDamagedEdgeLeavesRoomForBoth_data() {
  QTest::addColumn<QString>("kept");
  for (const char* kept : {"", "-5", "1", "words", "1365", "99999999", "2147483647", "9999999999999"})
    QTest::newRow(kept) << QString::fromLatin1(kept);
}

void NarrowWindowTest::aDamagedEdgeLeavesRoomForBoth() {
  QFETCH(QString, kept);
  const QString file = nurse_->folder() + QStringLiteral("/damaged.ini");
  QSettings(file, QSettings::IniFormat).setValue(QStringLiteral("form_width"), kept);
  Settings settings(file);
  MainWindow window(exactRules(), settings, nurse_->dialogs());
  window.resize(1366, 768);
  window.show();
  QVERIFY(QTest::qWaitForWindowExposed(&window));
  QVERIFY(window.findChild<Form*>()->width() >= 420);
  QVERIFY(window.findChild<WorkingPane*>()->width() >= 420);
  QCOMPARE(window.width(), 1366);
}

WARDCHALK_QT_TEST(NarrowWindowTest)

}  // namespace wardchalk::ui::narrow_window_test

#include "narrow_window_test.moc"
