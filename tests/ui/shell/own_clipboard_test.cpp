#include "ui/shell/own_clipboard.h"

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QMimeData>
#include <QProcess>
#include <QPushButton>
#include <QTest>

#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/practice/practice_window.h"
#include "ui/record/cases_window.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/practice_desk.h"
#include "ui/working/step_card.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::own_clipboard_test {

using namespace std::chrono_literals;
using test::usualCase;

namespace {

/// Text as another program or another run of this one puts it there.
void holdOnClipboard(const QString& text, bool marked) {
  auto* data = new QMimeData;
  data->setText(text);
  if (marked) data->setData(QStringLiteral("application/x-wardchalk"), QByteArrayLiteral("1"));
  QGuiApplication::clipboard()->setMimeData(data);
}

}  // namespace

/// Whoever sits down after a case is out of sight, and pastes (H52).
class OwnClipboardTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() {
    nurse_.reset();
    other_.kill();
    other_.waitForFinished();
  }

  void H52_whatWasCopiedGoesWithTheCase_data();
  void H52_whatWasCopiedGoesWithTheCase();
  void H52_theSelectionGoesToo_data();
  void H52_theSelectionGoesToo();
  void H52_whatIsNotOfTheCaseStays_data();
  void H52_whatIsNotOfTheCaseStays();
  void itStaysWhileTheCaseIsThere();
  void theEndOfASessionEmptiesIt();

 private:
  static QClipboard& clipboard() { return *QApplication::clipboard(); }
  static bool isEmpty(QClipboard::Mode mode = QClipboard::Clipboard) {
    const QMimeData* data = clipboard().mimeData(mode);
    return !data || data->formats().isEmpty();
  }
  QAction* action(const QString& name) { return nurse_->window().findChild<QAction*>(name); }
  void putElsewhere(const QString& text, bool marked);
  void leaveBy(const QString& way);
  void copyFrom(const QString& place);
  QLineEdit* chosenIn(const char* name) {
    auto* line = nurse_->window().findChild<QLineEdit*>(QLatin1String(name));
    line->setFocus(Qt::TabFocusReason);
    QTest::keyClick(line, Qt::Key_A, Qt::ControlModifier);
    return line;
  }
  static QStringList ways() {
    return {QStringLiteral("cover"), QStringLiteral("new child"), QStringLiteral("quit"),
            QStringLiteral("second check")};
  }

  ClockReading now_{1h, 400'000h};
  std::unique_ptr<Nurse> nurse_;
  QProcess other_;
};

void OwnClipboardTest::init() {
  clipboard().clear();
  if (clipboard().supportsSelection()) clipboard().clear(QClipboard::Selection);
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
  nurse_->window().findChild<IdleWatch*>()->setClock([this] { return now_; });
  nurse_->dialogs().answer = Unsaved::discard;
}

void OwnClipboardTest::leaveBy(const QString& way) {
  if (way == QStringLiteral("cover")) {
    now_.sinceBoot += 6min;
    now_.onTheWall += 6min;
    nurse_->window().findChild<IdleWatch*>()->look();
    QVERIFY(nurse_->window().findChild<CoverPage*>()->isVisible());
  }
  if (way == QStringLiteral("new child")) action(QStringLiteral("new-child"))->trigger();
  if (way == QStringLiteral("quit")) QVERIFY(nurse_->window().close());
  if (way == QStringLiteral("second check")) action(QStringLiteral("second-check-begin"))->trigger();
}

void OwnClipboardTest::copyFrom(const QString& place) {
  if (place == QStringLiteral("field")) {
    QTest::keyClick(chosenIn("order.dose:text"), Qt::Key_C, Qt::ControlModifier);
    QCOMPARE(clipboard().text(), QStringLiteral("80 mg/dose"));
    return;
  }
  if (place == QStringLiteral("field, cut")) {
    QTest::keyClick(chosenIn("order.medicine:text"), Qt::Key_X, Qt::ControlModifier);
    QCOMPARE(clipboard().text(), QStringLiteral("Plover"));
    return;
  }
  if (place == QStringLiteral("cases")) {
    action(QStringLiteral("several-cases"))->trigger();
    auto* list = nurse_->window().findChild<CasesWindow*>();
    nurse_->dialogs().chosen << QStringList{
        QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/demo/class_set.csv")};
    list->findChild<QPushButton*>(QStringLiteral("open-cases"))->click();
    auto* view = list->findChild<QAbstractItemView*>(QStringLiteral("cases"));
    QTRY_VERIFY(view->model()->rowCount() > 3);
    QVERIFY(hasKeyboard(list));
    view->setFocus(Qt::TabFocusReason);
    view->setCurrentIndex(view->model()->index(1, 0));
    QTest::keyClick(view, Qt::Key_C, Qt::ControlModifier);
    QVERIFY(!clipboard().text().isEmpty());
    QVERIFY(nurse_->goBack());
    return;
  }
  if (place.startsWith(QStringLiteral("copy-step"))) {
    nurse_->press(Qt::Key_F6);
    nurse_->window().findChild<WorkingPane*>()->cards().front()->setFocus(Qt::TabFocusReason);
  }
  action(place)->trigger();
  QVERIFY(!isEmpty());
}

void OwnClipboardTest::H52_whatWasCopiedGoesWithTheCase_data() {
  QTest::addColumn<QString>("place");
  QTest::addColumn<QString>("way");
  for (const char* place :
       {"copy-working", "copy-working-mathml", "copy-working-latex", "copy-working-picture",
        "copy-working-svg", "copy-step", "copy-step-picture", "field", "field, cut", "cases"})
    for (const QString& way : ways())
      QTest::addRow("%s, %s", place, qPrintable(way)) << QString::fromLatin1(place) << way;
}

void OwnClipboardTest::H52_whatWasCopiedGoesWithTheCase() {
  QFETCH(QString, place);
  QFETCH(QString, way);
  nurse_->fill(usualCase());
  copyFrom(place);
  leaveBy(way);
  QVERIFY2(isEmpty(), qPrintable(clipboard().text()));
}

void OwnClipboardTest::H52_theSelectionGoesToo_data() {
  QTest::addColumn<QString>("way");
  for (const QString& way : ways()) QTest::newRow(qPrintable(way)) << way;
}

/// On X11 what is chosen in a field can be pasted elsewhere without having been copied.
void OwnClipboardTest::H52_theSelectionGoesToo() {
  QFETCH(QString, way);
  if (!clipboard().supportsSelection()) QSKIP("no such selection here; ui_own_clipboard_test_x11 has one");
  nurse_->fill(usualCase());
  chosenIn("order.medicine:text");
  QCOMPARE(clipboard().text(QClipboard::Selection), QStringLiteral("Plover"));
  leaveBy(way);
  QVERIFY2(isEmpty(QClipboard::Selection), qPrintable(clipboard().text(QClipboard::Selection)));
}

/// By another program, where the system tells whose the clipboard is.
void OwnClipboardTest::putElsewhere(const QString& text, bool marked) {
  if (QGuiApplication::platformName() == QStringLiteral("offscreen")) return holdOnClipboard(text, marked);
  other_.start(QCoreApplication::applicationFilePath(),
               {QStringLiteral("OwnClipboardTest"), QStringLiteral("--hold"), text,
                marked ? QStringLiteral("marked") : QString()});
  QVERIFY(other_.waitForStarted());
  QTRY_COMPARE_WITH_TIMEOUT(clipboard().text(), text, 30000);  // another program starts first
}

void OwnClipboardTest::H52_whatIsNotOfTheCaseStays_data() {
  QTest::addColumn<QString>("what");
  QTest::addColumn<QString>("way");
  for (const char* what : {"elsewhere", "after a copy", "after a cut", "another run", "practice"})
    for (const QString& way : ways())
      QTest::addRow("%s, %s", what, qPrintable(way)) << QString::fromLatin1(what) << way;
}

void OwnClipboardTest::H52_whatIsNotOfTheCaseStays() {
  QFETCH(QString, what);
  QFETCH(QString, way);
  nurse_->fill(usualCase());
  const QString expected = QStringLiteral("a letter home");
  if (what == QStringLiteral("practice")) {
    nurse_->press(Qt::Key_F12);
    auto* practice = nurse_->window().findChild<PracticeDesk*>()->window();
    QVERIFY(hasKeyboard(practice));
    auto* line = practice->findChild<QLineEdit*>();
    QVERIFY(line);
    line->setText(expected);
    line->setFocus(Qt::TabFocusReason);
    line->selectAll();
    line->copy();
    QCOMPARE(clipboard().text(), expected);
    QVERIFY(nurse_->goBack());
  } else {
    if (what == QStringLiteral("after a copy")) copyFrom(QStringLiteral("copy-working"));
    if (what == QStringLiteral("after a cut")) copyFrom(QStringLiteral("field, cut"));
    putElsewhere(expected, what == QStringLiteral("another run"));
  }
  leaveBy(way);
  QCOMPARE(clipboard().text(), expected);
}

void OwnClipboardTest::itStaysWhileTheCaseIsThere() {
  nurse_->fill(usualCase());
  copyFrom(QStringLiteral("copy-working"));
  nurse_->press(Qt::Key_F5);
  nurse_->dialogs().answer = Unsaved::keep;
  action(QStringLiteral("new-child"))->trigger();
  QVERIFY(!nurse_->window().close());
  QVERIFY(!isEmpty());
}

/// A session that ends may ask no window.
void OwnClipboardTest::theEndOfASessionEmptiesIt() {
  nurse_->fill(usualCase());
  copyFrom(QStringLiteral("copy-working"));
  QVERIFY(QMetaObject::invokeMethod(qApp, "aboutToQuit"));
  QVERIFY(isEmpty());
}

namespace {

/// "--hold": the other program.
int asEitherProgram(int argc, char** argv) {
  QApplication application(argc, argv);
  const QStringList asked = QCoreApplication::arguments();
  if (asked.size() == 4 && asked[1] == QStringLiteral("--hold")) {
    holdOnClipboard(asked[2], !asked[3].isEmpty());
    return QApplication::exec();
  }
  OwnClipboardTest test;
  return QTest::qExec(&test, argc, argv);
}

}  // namespace

WARDCHALK_QT_TEST_BY(OwnClipboardTest, asEitherProgram)

}  // namespace wardchalk::ui::own_clipboard_test

#include "own_clipboard_test.moc"
