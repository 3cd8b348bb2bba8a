#include "ui/working/working_pane.h"

#include <QApplication>
#include <QComboBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "tests/ui/support/ink.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "tests/ui/working/kept_answers.h"
#include "tests/ui/working/sample_cases.h"
#include "ui/working/amount_text.h"
#include "ui/working/amount_widget.h"
#include "ui/working/finding_row.h"
#include "ui/working/flag_widget.h"
#include "ui/working/step_card.h"

namespace wardchalk::ui::test::working_pane_test {

namespace {

Case edited(const char* name, const char* path, const char* text) {
  Case given = sample(name).given;
  if (!setEntry(given, path, text)) qFatal("unreadable entry");
  return given;
}

/// A pane of the usual size with a sample on screen.
struct Shown {
  explicit Shown(const char* name) : Shown(sample(name)) {}
  explicit Shown(const Worksheet& sheet) : pane(nullptr), answers(pane, *pane.amount()) {
    pane.resize(930, 700);
    answers.follow(sheet);
    pane.show();
  }
  WorkingPane pane;
  KeptAnswers<WorkingPane> answers;
};

StepCard* cardOf(const WorkingPane& pane, StepId id) {
  for (StepCard* card : pane.cards())
    if (card->view().step.id == id) return card;
  return nullptr;
}

QPalette darkDesktop() {
  QPalette dark;
  dark.setColor(QPalette::Window, QColor(0x2b, 0x2b, 0x2b));
  dark.setColor(QPalette::WindowText, QColor(0xee, 0xee, 0xee));
  dark.setColor(QPalette::Button, QColor(0x3a, 0x3a, 0x3a));
  dark.setColor(QPalette::ButtonText, QColor(0xee, 0xee, 0xee));
  return dark;
}

}  // namespace

class WorkingPaneTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void showsOneCardForEachStep();
  void usualCaseShowsFlagAmountAndThreeStepsAtOnce();
  void flagSaysWhatTheVerdictIs_data();
  void flagSaysWhatTheVerdictIs();
  void keepsTheCardsThatAnEditDoesNotTouch();
  void laysOutNothingTwiceForOneEdit();
  void stepOriginsLeadToTheirCard();
  void otherOriginsAreForTheForm();
  void upAndDownWalkTheCards();
  void tabGoesFromFlagThroughTheCards();
  void lightsANumberWhereverItStands();
  void zoomStaysWithinItsEnds();
  void zoomKeepsEverythingInside_data();
  void zoomKeepsEverythingInside();
  void emptyPaneOffersAWorkedExample();
  void findingsLeadToTheirField();
  void anAnswerKeepsTheKeyboard();
  void followsTheDesktopIntoTheDark();
  void shoots();
};

void WorkingPaneTest::showsOneCardForEachStep() {
  const Shown shown("usual");
  const Worksheet sheet = sample("usual");
  QCOMPARE(shown.pane.cards().size(), sheet.steps.size());
  for (std::size_t i = 0; i < sheet.steps.size(); ++i)
    QCOMPARE(shown.pane.cards()[i]->view().step.id, sheet.steps[i].id);
}

void WorkingPaneTest::usualCaseShowsFlagAmountAndThreeStepsAtOnce() {
  const Shown shown("usual");
  for (std::size_t i = 0; i < 3; ++i) {
    const StepCard* card = shown.pane.cards()[i];
    QVERIFY(card->mapTo(&shown.pane, QPoint(0, card->height())).y() <= shown.pane.height());
    QVERIFY2(card->height() <= 130, qPrintable(QString::number(card->height())));
  }
}

void WorkingPaneTest::flagSaysWhatTheVerdictIs_data() {
  QTest::addColumn<QString>("name");
  QTest::addColumn<QString>("says");
  QTest::newRow("safe") << "usual"
                        << "SAFE by this reference. 80 mg ordered; safe up to 84 mg per dose. NOT checked: ";
  QTest::newRow("ask") << "ask"
                       << "ASK BEFORE GIVING. Too little by this reference: 55 mg per dose ordered; 84 mg "
                          "per dose is recommended (this is 65.5 % of it). NOT checked: ";
  QTest::newRow("unsafe")
      << "unsafe"
      << "UNSAFE by this reference. Over by 7.1 %: 90 mg ordered; safe up to 84 mg per dose. NOT checked: ";
  QTest::newRow("not covered") << "not covered"
                               << "NOT COVERED by this reference. ";
  QTest::newRow("undecided") << "undecided"
                             << "NO VERDICT: enter the height. NOT checked: single dose";
}

void WorkingPaneTest::flagSaysWhatTheVerdictIs() {
  QFETCH(QString, name);
  QFETCH(QString, says);
  const Shown shown(name.toLatin1().constData());
  QVERIFY2(shown.pane.flag()->spoken().startsWith(says), qPrintable(shown.pane.flag()->spoken()));
}

void WorkingPaneTest::keepsTheCardsThatAnEditDoesNotTouch() {
  Shown shown("usual");
  StepCard* surface = cardOf(shown.pane, StepId::bsa);
  StepCard* compared = cardOf(shown.pane, StepId::compareSingle);
  const int surfaceTimes = surface->timesLaidOut();
  const int comparedTimes = compared->timesLaidOut();
  shown.pane.show(workOut(edited("usual", "order.dose", "79 mg"), exactRules()));
  QCOMPARE(cardOf(shown.pane, StepId::bsa), surface);
  QCOMPARE(cardOf(shown.pane, StepId::compareSingle), compared);
  QCOMPARE(surface->timesLaidOut(), surfaceTimes);
  QCOMPARE(compared->timesLaidOut(), comparedTimes + 1);
}

void WorkingPaneTest::laysOutNothingTwiceForOneEdit() {
  Shown shown("usual");
  QVERIFY(QTest::qWaitForWindowExposed(&shown.pane));
  shown.pane.show(workOut(edited("usual", "child.weight", "18.4 kg"), exactRules()));
  shown.pane.grab();
  for (const StepCard* card : shown.pane.cards())
    QVERIFY(card->timesLaidOut() <= 3);  // unsized, sized, edited
  const int before = cardOf(shown.pane, StepId::bsa)->timesLaidOut();
  shown.pane.show(workOut(edited("usual", "child.weight", "18.5 kg"), exactRules()));
  shown.pane.grab();
  QCOMPARE(cardOf(shown.pane, StepId::bsa)->timesLaidOut(), before + 1);
}

void WorkingPaneTest::stepOriginsLeadToTheirCard() {
  Shown shown("usual");
  QVERIFY(QTest::qWaitForWindowActive(&shown.pane));
  const QSignalSpy activated(&shown.pane, &WorkingPane::originActivated);
  Q_EMIT cardOf(shown.pane, StepId::compareDaily)->originActivated(QStringLiteral("step:limit-day"));
  QTRY_VERIFY(cardOf(shown.pane, StepId::limitDay)->hasFocus());
  QCOMPARE(activated.size(), 0);
}

void WorkingPaneTest::otherOriginsAreForTheForm() {
  const Shown shown("usual");
  const QSignalSpy activated(&shown.pane, &WorkingPane::originActivated);
  Q_EMIT cardOf(shown.pane, StepId::limitDose)->originActivated(QStringLiteral("reference.high"));
  QCOMPARE(activated.size(), 1);
  QCOMPARE(activated.first().first().toString(), QStringLiteral("reference.high"));
}

void WorkingPaneTest::upAndDownWalkTheCards() {
  Shown shown("usual");
  QVERIFY(QTest::qWaitForWindowActive(&shown.pane));
  const auto& cards = shown.pane.cards();
  cards.front()->setFocus();
  for (std::size_t i = 1; i < cards.size(); ++i) {
    QTest::keyClick(cards[i - 1], Qt::Key_Down);
    QTRY_VERIFY(cards[i]->hasFocus());
    const QRect seen(cards[i]->mapTo(&shown.pane, QPoint()), cards[i]->size());
    QVERIFY(shown.pane.rect().contains(seen));
  }
  QTest::keyClick(cards.back(), Qt::Key_Down);
  QVERIFY(cards.back()->hasFocus());
  QTest::keyClick(cards.back(), Qt::Key_Up);
  QTRY_VERIFY(cards[cards.size() - 2]->hasFocus());
}

void WorkingPaneTest::tabGoesFromFlagThroughTheCards() {
  Shown shown("ask");
  QVERIFY(QTest::qWaitForWindowActive(&shown.pane));
  shown.pane.flag()->setFocus();
  QStringList order;
  for (int i = 0; i < 40 && QApplication::focusWidget() != shown.pane.cards().back(); ++i) {
    order << QApplication::focusWidget()->objectName();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  QCOMPARE(QApplication::focusWidget(), shown.pane.cards().back());
  const QStringList first({QStringLiteral("flag"), QStringLiteral("settled_0"), QStringLiteral("settled_1"),
                           QStringLiteral("amount"), QStringLiteral("step_bsa")});
  QCOMPARE(order.mid(0, first.size()), first);
}

void WorkingPaneTest::lightsANumberWhereverItStands() {
  Shown shown("usual");
  const QImage before = cardOf(shown.pane, StepId::orderedDay)->grab().toImage();
  const QImage other = cardOf(shown.pane, StepId::bsa)->grab().toImage();
  shown.pane.light(QStringLiteral("order.dose"));
  QVERIFY(cardOf(shown.pane, StepId::orderedDay)->grab().toImage() != before);
  QCOMPARE(cardOf(shown.pane, StepId::bsa)->grab().toImage(), other);
}

void WorkingPaneTest::zoomStaysWithinItsEnds() {
  WorkingPane pane;
  pane.setZoom(20);
  QCOMPARE(pane.zoom(), 80);
  pane.setZoom(900);
  QCOMPARE(pane.zoom(), 300);
}

void WorkingPaneTest::zoomKeepsEverythingInside_data() {
  QTest::addColumn<int>("index");
  QTest::addColumn<int>("zoom");
  for (std::size_t i = 0; i < samplesAndGoldens().size(); ++i)
    for (const int zoom : {80, 100, 200, 300})
      QTest::addRow("%s at %d", samplesAndGoldens()[i].name.c_str(), zoom) << static_cast<int>(i) << zoom;
}

void WorkingPaneTest::zoomKeepsEverythingInside() {
  QFETCH(int, index);
  QFETCH(int, zoom);
  const SampleCase& each = samplesAndGoldens()[static_cast<std::size_t>(index)];
  Shown shown(workOut(each.given, each.rules));
  shown.pane.setZoom(zoom);
  for (const Run& run : shown.pane.flag()->drawing().runs)
    QVERIFY2(QRectF(shown.pane.flag()->rect()).contains(inkOf(run)), qPrintable(run.text));
  const auto* amount = shown.pane.findChild<AmountText*>();
  for (const Run& run : amount->drawing().runs)
    QVERIFY2(QRectF(amount->rect()).contains(inkOf(run)), qPrintable(run.text));
  for (const StepCard* card : shown.pane.cards()) {
    QVERIFY(card->height() >= card->layout().size.height());
    QVERIFY(card->geometry().right() <= shown.pane.width());
  }
}

void WorkingPaneTest::emptyPaneOffersAWorkedExample() {
  WorkingPane pane;
  pane.resize(930, 700);
  pane.showEmpty();
  pane.show();
  QVERIFY(!pane.flag()->isVisible());
  const QSignalSpy requested(&pane, &WorkingPane::exampleRequested);
  auto* example = pane.findChild<QPushButton*>(QStringLiteral("example"));
  QVERIFY(example && example->isVisible());
  QTest::keyClick(example, Qt::Key_Space);
  QCOMPARE(requested.size(), 1);
  pane.show(sample("usual"));
  QVERIFY(pane.flag()->isVisible() && !example->isVisible());
}

void WorkingPaneTest::findingsLeadToTheirField() {
  const Shown shown("undecided");
  const QSignalSpy activated(&shown.pane, &WorkingPane::originActivated);
  auto* row = shown.pane.findChild<FindingRow*>(QStringLiteral("finding_source-not-stated"));
  QVERIFY(row);
  QTest::keyClick(row, Qt::Key_Return);
  QTest::keyClick(shown.pane.flag(), Qt::Key_Return);
  QCOMPARE(activated.size(), 2);
  QCOMPARE(activated.at(0).first().toString(), QStringLiteral("reference.source"));
  QCOMPARE(activated.at(1).first().toString(), QStringLiteral("child.height"));
}

/// At a size of letters at which the amount must scroll with the working, an answer unfolds it and keeps the
/// keyboard.
void WorkingPaneTest::anAnswerKeepsTheKeyboard() {
  Shown shown("ask");
  QVERIFY(QTest::qWaitForWindowActive(&shown.pane));
  for (const int zoom : {100, 130, 160, 200}) {
    shown.pane.setZoom(zoom);
    shown.answers.follow(Worksheet{});
    shown.answers.follow(sample("ask"));
    QVERIFY(!shown.pane.amount()->showsAmount());
    const QList<QComboBox*> boxes = settlingBoxes(shown.pane);
    choose(boxes.first(), 1);
    QComboBox* last = boxes.last();
    last->setFocus();
    choose(last, 1);
    QVERIFY(shown.pane.amount()->showsAmount());
    QTRY_COMPARE(QApplication::focusWidget(), last);
  }
}

void WorkingPaneTest::followsTheDesktopIntoTheDark() {
  Shown shown("usual");
  shown.pane.setPalette(darkDesktop());
  const QImage card = shown.pane.cards().front()->grab().toImage();
  QCOMPARE(card.pixelColor(card.width() / 2, 4), boardPalette(Scheme::dark)[Ink::card]);
}

void WorkingPaneTest::shoots() {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) QSKIP("no folder for pictures is named");
  for (const SampleCase& each : sampleCases())
    for (const int zoom : {100, 200})
      for (const bool dark : {false, true}) {
        WorkingPane pane;
        KeptAnswers<WorkingPane> answers(pane, *pane.amount());
        if (dark) pane.setPalette(darkDesktop());
        pane.resize(930, 700);
        pane.setZoom(zoom);
        if (each.name == "empty")
          pane.showEmpty();
        else
          answers.follow(workOut(each.given, each.rules));
        pane.show();
        QVERIFY(QTest::qWaitForWindowExposed(&pane));
        for (QComboBox* box : settlingBoxes(pane).mid(0, dark ? 9 : 1)) choose(box, 1);
        pane.grab().save(QStringLiteral("%1/pane-%2-%3%4.png")
                             .arg(folder, QString::fromStdString(each.name))
                             .arg(zoom)
                             .arg(dark ? QStringLiteral("-dark") : QString()));
      }
}

WARDCHALK_QT_TEST(WorkingPaneTest)

}  // namespace wardchalk::ui::test::working_pane_test

#include "working_pane_test.moc"
