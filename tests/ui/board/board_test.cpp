#include "ui/board/board.h"

#include <QAccessible>
#include <QPointer>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>
#include <QVariantAnimation>
#include <algorithm>
#include <functional>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "tests/support/settled.h"
#include "tests/ui/board/golden_cases.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board_surface.h"
#include "ui/board/step_list.h"
#include "ui/board/verdict_sheet.h"
#include "ui/working/amount_text.h"
#include "ui/working/flag_widget.h"

namespace wardchalk::ui::test::board_test {

namespace {

constexpr QSize ward(1366, 768);

QString plain(QString text) { return text.replace(QChar::Nbsp, u' '); }

/// A board on a screen of its own, without motion.
class Shown {
 public:
  explicit Shown(wardchalk::Shown seen, int strokeMs = 0) : board_(std::move(seen), strokeMs) {
    board_.resize(ward);
    board_.show();
    board_.surface()->setFocus();
  }
  explicit Shown(const char* name) : Shown(sample(name)) {}

  Board& board() { return board_; }
  BoardSurface& surface() { return *board_.surface(); }
  const BoardStory& story() { return board_.story(); }

  void press(Qt::Key key, int times = 1) {
    for (int i = 0; i < times; ++i) QTest::keyClick(&surface(), key);
  }
  void goTo(StepId id) {
    for (const BoardPage& page : story().pages())
      if (!page.isVerdict && page.view.step.id == id) surface().goTo(*story().atNumber(page.number));
  }

  /// Every letter that is painted now.
  QString painted() {
    QStringList words;
    if (surface().isBlank()) return {};
    for (const Run& run : surface().frame().drawing.runs) words << run.text;
    for (const Run& run : surface().body().drawing.runs)
      if (run.stage <= surface().upToStage()) words << run.text;
    if (const VerdictSheet* sheet = surface().verdict()) {
      for (const Run& run : sheet->flag()->drawing().runs) words << run.text;
      for (const AmountText* line : sheet->lines())
        for (const Run& run : line->drawing().runs) words << run.text;
    }
    return plain(words.join(u' '));
  }

  /// Everything that assistive technology can read now.
  QString accessible() {
    QStringList said;
    const std::function<void(QAccessibleInterface*)> walk = [&](QAccessibleInterface* one) {
      if (!one || one->state().invisible) return;
      for (const QAccessible::Text kind : {QAccessible::Name, QAccessible::Description, QAccessible::Value})
        said << one->text(kind);
      for (int i = 0; i < one->childCount(); ++i) walk(one->child(i));
    };
    walk(QAccessible::queryAccessibleInterface(&board_));
    return said.join(u' ');
  }

 private:
  Board board_;
};

/// What is said at each press from the first question to the end.
QStringList saidToTheEnd(Shown& shown) {
  QStringList said{shown.surface().spoken()};
  while (shown.surface().place() != shown.story().last()) {
    shown.press(Qt::Key_Space);
    said << shown.surface().spoken();
  }
  return said;
}

QRectF factorRect(Shown& shown, int factor) { return framesOf(shown.surface().body(), factor).front(); }

}  // namespace

class BoardTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void uncoversTheUsualCaseStageByStage();
  void goesBackExactly();
  void takesTheKeysOfAPresenter();
  void takesClicks();
  void tellsNothingBeforeItsTurn();
  void tellsTheVerdictAtTheEndAlone();
  void asksInPlaceOfAnAmount();
  void blanksAndComesBack();
  void waitsToPredict();
  void turnsAFactorOver();
  void turnsBackBeforeItGoesOn();
  void choosesNoFactorBeforeAllAreThere();
  void jumpsByDigits();
  void jumpsByTheList();
  void showsItsKeys();
  void leaves();
  void changesItsLook();
  void drawsStrokesInAndThenRests();
  void tellsEachStageToAssistiveTechnology();
  void keepsTheCautionAndTheFacts();
  void choosesTheOtherScreen();
  void shoots();
};

void BoardTest::uncoversTheUsualCaseStageByStage() {
  Shown shown("usual");
  const QStringList expected{
      QStringLiteral("Step 1 of 11. What is the body surface area (BSA)? looking for square metres"),
      QStringLiteral("the square root of 103 centimetres times 17.2 kilograms times 1 square metre squared "
                     "over 3,600 centimetre kilograms"),
      QStringLiteral("centimetres above cancel centimetres below"),
      QStringLiteral("kilograms above cancel kilograms below"),
      QStringLiteral("the square root of 0.4921 m⁴"),
      QStringLiteral("0.7015 m²"),
      QStringLiteral("rounded to 0.70 square metres"),
      QStringLiteral("Step 2 of 11. What is the safe dose? looking for milligrams per dose"),
      QStringLiteral("120 milligrams per square metre per dose, from: reference"),
      QStringLiteral("0.70 square metres, from: step 1"),
      QStringLiteral("square metres above cancel square metres below"),
      QStringLiteral("84 milligrams per dose"),
      QStringLiteral("Step 3 of 11. What is the safe daily dose? looking for milligrams per day"),
      QStringLiteral("84 milligrams per dose, from: step 2"),
      QStringLiteral("2 doses per day, from: reference: how often"),
      QStringLiteral("doses above cancel doses below"),
      QStringLiteral("168 milligrams in 24 h"),
      QStringLiteral("Step 4 of 11. How much is ordered in 24 h? looking for milligrams per day"),
      QStringLiteral("80 milligrams per dose, from: order"),
      QStringLiteral("2 doses per day, from: order: how often"),
      QStringLiteral("doses above cancel doses below"),
      QStringLiteral("160 milligrams in 24 h"),
      QStringLiteral("Step 5 of 11. Is the ordered dose within the safe dose?"),
      QStringLiteral("80 milligrams and 84 milligrams"),
      QStringLiteral("80 milligrams is not more than 84 milligrams: true or false?"),
      QStringLiteral("80 milligrams is not more than 84 milligrams: true; 95.2 % of the limit"),
      QStringLiteral("Step 6 of 11. Is the total in 24 h within the safe daily dose?"),
      QStringLiteral("160 milligrams and 168 milligrams"),
      QStringLiteral("160 milligrams is not more than 168 milligrams: true or false?"),
      QStringLiteral("160 milligrams is not more than 168 milligrams: true; 95.2 % of the limit"),
      QStringLiteral("Step 7 of 11. Is it enough to work?"),
      QStringLiteral("80 milligrams and 75.6 milligrams"),
      QStringLiteral("80 milligrams is not less than 75.6 milligrams: true or false?"),
      QStringLiteral("80 milligrams is not less than 75.6 milligrams: true; asked about below 90 % of the "
                     "recommended dose"),
      QStringLiteral("Step 8 of 11. Is it given as often as recommended?"),
      QStringLiteral("every 12 hours and every 12 hours"),
      QStringLiteral("every 12 hours agrees with every 12 hours: true or false?"),
      QStringLiteral("every 12 hours agrees with every 12 hours: true"),
      QStringLiteral("Step 9 of 11. How many mL do you give? looking for millilitres per dose"),
      QStringLiteral("80 milligrams per dose, from: order"),
      QStringLiteral("1 millilitre over 25 milligrams, from: label"),
      QStringLiteral("milligrams above cancel milligrams below"),
      QStringLiteral("3.2 millilitres per dose"),
      QStringLiteral("Step 10 of 11. Which syringe? What do you draw up?"),
      QStringLiteral("The exact amount: 3.2 mL."),
      QStringLiteral("Where is 3.2 mL on this scale?"),
      QStringLiteral(
          "3.2 mL is on a mark of the 5 mL syringe (0.2 mL apart); smallest syringe that holds it"),
      QStringLiteral("Step 11 of 11. What is the verdict?"),
      QStringLiteral("SAFE by this reference. 80 mg ordered; safe up to 84 mg per dose. NOT checked: "
                     "maximum, age and size bands, route. Measure 3.2 mL (80 mg) for one dose. by mouth "
                     "every 12 hours. Label must read: Plover 25 mg in 1 mL")};
  const QStringList said = saidToTheEnd(shown);
  for (qsizetype i = 0; i < qMin(said.size(), expected.size()); ++i) QCOMPARE(said[i], expected[i]);
  QCOMPARE(said.size(), expected.size());
}

void BoardTest::goesBackExactly() {
  for (const char* name : {"usual", "household", "tablet", "infusion", "unsafe", "undecided"}) {
    Shown shown(name);
    QStringList seen{shown.painted()};
    while (shown.surface().place() != shown.story().last()) {
      shown.press(Qt::Key_Space);
      seen << shown.painted();
    }
    for (qsizetype i = seen.size() - 2; i >= 0; --i) {
      shown.press(Qt::Key_PageUp);
      QCOMPARE(shown.painted(), seen[i]);
    }
    shown.press(Qt::Key_PageUp);
    QCOMPARE(shown.surface().place(), shown.story().first());
  }
}

void BoardTest::takesTheKeysOfAPresenter() {
  Shown shown("usual");
  int stage = 0;
  for (const Qt::Key key : {Qt::Key_Space, Qt::Key_PageDown, Qt::Key_Right, Qt::Key_Return, Qt::Key_Enter}) {
    shown.press(key);
    QCOMPARE(shown.surface().place(), (BoardPlace{0, ++stage, false}));
  }
  for (const Qt::Key key : {Qt::Key_PageUp, Qt::Key_Backspace, Qt::Key_Left}) {
    shown.press(key);
    QCOMPARE(shown.surface().place(), (BoardPlace{0, --stage, false}));
  }
  shown.press(Qt::Key_End);
  QCOMPARE(shown.surface().place(), shown.story().last());
  shown.press(Qt::Key_Space);
  QCOMPARE(shown.surface().place(), shown.story().last());
  shown.press(Qt::Key_Home);
  QCOMPARE(shown.surface().place(), shown.story().first());
}

void BoardTest::takesClicks() {
  Shown shown("usual");
  const QPoint empty(ward.width() - 60, ward.height() / 2);
  QTest::mouseClick(&shown.surface(), Qt::LeftButton, {}, empty);
  QCOMPARE(shown.surface().place().stage, 1);
  QTest::mouseClick(&shown.surface(), Qt::RightButton, {}, empty);
  QCOMPARE(shown.surface().place().stage, 0);
}

/// The number of a result stands nowhere, on the board or for assistive technology, before its stage; unless
/// it was entered, or stood in a chain already.
void BoardTest::tellsNothingBeforeItsTurn() {
  int looked = 0;
  for (const SampleCase& each : goldenCases()) {
    Shown shown(wardchalk::test::settled(workOut(each.given, each.rules)));
    QString known;
    for (const Fact& fact : shown.story().facts()) known += QString::fromStdString(fact.text) + u' ';
    QStringList told;
    QList<BoardPlace> places;
    for (bool more = true; more;) {
      places << shown.surface().place();
      static const QRegularExpression stepNumber(QStringLiteral("[Ss]tep [0-9]+( of [0-9]+)?"));
      told << QString(shown.painted() + u' ' + shown.accessible()).remove(stepNumber);
      more = shown.surface().place() != shown.story().last();
      shown.press(Qt::Key_Space);
    }
    for (std::size_t p = 0; p < shown.story().pages().size(); ++p) {
      const BoardPage& page = shown.story().pages()[p];
      if (page.isVerdict) continue;
      const auto* solved = std::get_if<Solved>(&page.view.step.body);
      if (!solved) continue;
      const QString chain = plain(QString::fromStdString(chainLine(solved->chain)));
      known += chain + u' ';
      const QString number = page.found.section(QChar(QChar::Nbsp), 0, 0).remove(u'≈');
      const QRegularExpression alone(
          QStringLiteral("(?<![0-9.,])%1(?![0-9.,]*[0-9])").arg(QRegularExpression::escape(number)));
      const bool small = number.size() < 2;  // the number of a step
      if (small || known.contains(alone)) continue;
      ++looked;
      for (qsizetype i = 0; i < told.size(); ++i) {
        const BoardPlace& at = places[i];
        const bool before =
            at.page < static_cast<int>(p) ||
            (at.page == static_cast<int>(p) && at.stage + 1 < static_cast<int>(page.stages.size()));
        if (before && told[i].contains(alone))
          QFAIL(qPrintable(QStringLiteral("%1: %2 told at page %3, stage %4: %5")
                               .arg(QString::fromStdString(each.name), number)
                               .arg(at.page)
                               .arg(at.stage)
                               .arg(told[i])));
      }
      known += number + u' ';
    }
  }
  QVERIFY(looked > 40);
}

void BoardTest::tellsTheVerdictAtTheEndAlone() {
  for (const SampleCase& each : goldenCases()) {
    const Worksheet sheet = workOut(each.given, each.rules);
    Shown shown(sheet);
    const QString title = QString::fromStdString(verdictTitle(sheet));
    while (shown.surface().place() != shown.story().last()) {
      QVERIFY(!shown.painted().contains(title));
      QVERIFY(!shown.accessible().contains(title));
      shown.press(Qt::Key_Space);
    }
    QVERIFY(plain(shown.surface().spoken()).contains(title));
    QVERIFY2(shown.painted().contains(title.left(14)), qPrintable(shown.painted()));
    QCOMPARE(shown.surface().verdict()->flag()->verdict(), sheet.verdict);
    shown.press(Qt::Key_PageUp);
    QVERIFY(!shown.surface().verdict());
  }
}

void BoardTest::asksInPlaceOfAnAmount() {
  const Worksheet sheet = sample("ask");
  Shown before(sheet);
  before.press(Qt::Key_End);
  QVERIFY(before.painted().contains(QStringLiteral("Ask: ")));
  QVERIFY(!before.painted().contains(QStringLiteral("Measure")));
  QVERIFY(!before.accessible().contains(QStringLiteral("Measure")));
  Shown after(wardchalk::test::settled(sheet));
  after.press(Qt::Key_End);
  QVERIFY(after.painted().contains(QStringLiteral("Measure")));
  QVERIFY(!after.painted().contains(QStringLiteral("Ask: ")));
}

void BoardTest::blanksAndComesBack() {
  Shown shown("usual");
  shown.press(Qt::Key_Space, 3);
  const BoardPlace place = shown.surface().place();
  const QImage before = shown.board().grab().toImage();
  for (const Qt::Key key : {Qt::Key_B, Qt::Key_Period}) {
    shown.press(key);
    QVERIFY(shown.surface().isBlank());
    QCOMPARE(shown.accessible().simplified(), QStringLiteral("Board The board is blank."));
    const QImage blank = shown.board().grab().toImage();
    QCOMPARE(blank.pixelColor(700, 300), blank.pixelColor(20, 20));
    shown.press(key);
    QVERIFY(!shown.surface().isBlank());
    QCOMPARE(shown.board().grab().toImage(), before);
  }
  shown.press(Qt::Key_B);
  shown.press(Qt::Key_PageDown);  // only uncovers the board again
  QVERIFY(!shown.surface().isBlank());
  QCOMPARE(shown.surface().place(), place);
}

void BoardTest::waitsToPredict() {
  Shown shown("usual");
  shown.goTo(StepId::give);
  shown.press(Qt::Key_P);
  shown.press(Qt::Key_Space);
  QCOMPARE(shown.surface().spoken(), QStringLiteral("How many mL per dose? Predict first."));
  QVERIFY(shown.painted().contains(QStringLiteral("Predict first.")));
  QCOMPARE(shown.surface().place().stage, 0);
  shown.press(Qt::Key_Space);
  QCOMPARE(shown.surface().place().stage, 1);
  shown.press(Qt::Key_Left);
  QVERIFY(shown.surface().place().predicting);
  shown.press(Qt::Key_P);
  QVERIFY(!shown.surface().place().predicting);
  shown.press(Qt::Key_Space);
  QCOMPARE(shown.surface().place().stage, 1);
}

void BoardTest::turnsAFactorOver() {
  Shown shown("usual");
  shown.goTo(StepId::give);
  shown.press(Qt::Key_Space, 4);
  const QString before = shown.painted();
  QVERIFY(before.contains(QStringLiteral("3.2 mL per dose")));
  shown.press(Qt::Key_Tab, 2);
  QCOMPARE(shown.surface().chosen(), 1);
  QCOMPARE(shown.surface().spoken(), QStringLiteral("1 millilitre over 25 milligrams. T turns it over."));
  shown.press(Qt::Key_T);
  QVERIFY(shown.painted().contains(QStringLiteral("Left over: mg²/dose/mL — not mL/dose.")));
  QVERIFY(shown.painted().contains(QStringLiteral("mg²/dose/mL")));
  QVERIFY(!shown.painted().contains(QStringLiteral("3.2")));
  QVERIFY(!shown.accessible().contains(QStringLiteral("3.2")));
  QVERIFY(!shown.surface().spoken().contains(QStringLiteral("3.2")));
  QVERIFY(shown.surface().spoken().contains(
      QStringLiteral("Left over: milligrams squared per dose per millilitre — not millilitres per dose.")));
  shown.press(Qt::Key_Return);  // the chosen factor is turned back by the same keys
  QVERIFY(shown.surface().turned().empty());
  QCOMPARE(shown.painted(), before);
}

void BoardTest::turnsBackBeforeItGoesOn() {
  Shown shown("usual");
  shown.goTo(StepId::limitDose);
  shown.press(Qt::Key_Space, 2);
  const BoardPlace place = shown.surface().place();
  QTest::mouseClick(&shown.surface(), Qt::LeftButton, {}, factorRect(shown, 0).center().toPoint());
  QCOMPARE(shown.surface().chosen(), 0);
  QCOMPARE(shown.surface().place(), place);
  shown.press(Qt::Key_T);
  QVERIFY(!shown.surface().turned().empty());
  shown.press(Qt::Key_Space);
  QVERIFY(shown.surface().turned().empty());
  QCOMPARE(shown.surface().place(), place);
  shown.press(Qt::Key_Space);
  QCOMPARE(shown.surface().place().stage, place.stage + 1);
}

void BoardTest::choosesNoFactorBeforeAllAreThere() {
  Shown shown("usual");
  shown.goTo(StepId::limitDose);
  for (int stage = 0; stage < 2; ++stage) {
    shown.press(Qt::Key_Tab);
    QCOMPARE(shown.surface().chosen(), -1);
    shown.press(Qt::Key_T);
    QVERIFY(shown.surface().turned().empty());
    shown.press(Qt::Key_Space);
  }
  shown.press(Qt::Key_Down);
  QCOMPARE(shown.surface().chosen(), 0);
  shown.press(Qt::Key_Up);
  QCOMPARE(shown.surface().chosen(), 1);
  shown.goTo(StepId::compareSingle);
  shown.press(Qt::Key_Space, 3);
  shown.press(Qt::Key_Tab);
  QCOMPARE(shown.surface().chosen(), -1);
}

void BoardTest::jumpsByDigits() {
  Shown shown("usual");
  shown.press(Qt::Key_1);
  shown.press(Qt::Key_0);
  QVERIFY(shown.painted().contains(QStringLiteral("Go to step 10")));
  shown.press(Qt::Key_Return);
  QCOMPARE(shown.surface().place(), (BoardPlace{9, 0, false}));
  shown.press(Qt::Key_7);
  shown.press(Qt::Key_7);
  shown.press(Qt::Key_Return);  // there is none
  QCOMPARE(shown.surface().place(), (BoardPlace{9, 0, false}));
  shown.press(Qt::Key_2);
  shown.press(Qt::Key_3);
  shown.press(Qt::Key_Backspace);  // takes the 3 back
  shown.press(Qt::Key_Enter);
  QCOMPARE(shown.surface().place(), (BoardPlace{1, 0, false}));
}

void BoardTest::jumpsByTheList() {
  Shown shown("usual");
  StepList* list = shown.board().steps();
  QVERIFY(list->isHidden());
  shown.press(Qt::Key_L);
  QVERIFY(list->isVisible());
  QCOMPARE(list->count(), static_cast<int>(shown.story().pages().size()));
  QCOMPARE(list->item(1)->text(), QStringLiteral("2  What is the safe dose?"));
  for (int i = 0; i < list->count(); ++i)
    QVERIFY(!list->item(i)->text().contains(QStringLiteral("mL in one dose")));
  QTest::keyClick(list, Qt::Key_Down);
  QTest::keyClick(list, Qt::Key_Down);
  QTest::keyClick(list, Qt::Key_Return);
  QVERIFY(list->isHidden());
  QCOMPARE(shown.surface().place(), (BoardPlace{2, 0, false}));
  shown.press(Qt::Key_L);
  QTest::keyClick(list, Qt::Key_Escape);
  QVERIFY(list->isHidden());
  QVERIFY(shown.board().isVisible());
}

void BoardTest::showsItsKeys() {
  Shown shown("usual");
  const QString before = shown.surface().spoken();
  shown.press(Qt::Key_H);
  QVERIFY(shown.surface().spoken().contains(QStringLiteral("T or Enter: turn it over")));
  shown.press(Qt::Key_Space);  // only takes the keys away
  QCOMPARE(shown.surface().spoken(), before);
  QCOMPARE(shown.surface().place(), shown.story().first());
}

void BoardTest::leaves() {
  for (const Qt::Key key : {Qt::Key_Escape, Qt::Key_F11}) {
    QPointer<Board> board = new Board(sample("usual"), 0);
    board->setAttribute(Qt::WA_DeleteOnClose);
    board->show();
    QTest::keyClick(board->surface(), Qt::Key_B);
    QTest::keyClick(board->surface(), key);  // also from a blank board
    QTRY_VERIFY(!board);
  }
}

void BoardTest::changesItsLook() {
  Shown shown("usual");
  const Scheme before = shown.surface().look();
  shown.press(Qt::Key_End);
  shown.press(Qt::Key_D);
  QVERIFY(shown.surface().look() != before);
  QCOMPARE(shown.board().grab().toImage().pixelColor(3, ward.height() / 2),
           boardPalette(shown.surface().look())[Ink::board]);
  shown.press(Qt::Key_D);
  QCOMPARE(shown.surface().look(), before);
}

void BoardTest::drawsStrokesInAndThenRests() {
  const auto atStroke = [](int strokeMs) {
    auto shown = std::make_unique<Shown>(wardchalk::Shown(sample("usual")), strokeMs);
    shown->goTo(StepId::limitDose);
    shown->press(Qt::Key_Space, 3);
    return shown;
  };
  const auto still = atStroke(0);
  QCOMPARE(still->surface().findChild<QVariantAnimation*>()->state(), QAbstractAnimation::Stopped);
  const QImage whole = still->board().grab().toImage();
  const auto slow = atStroke(10'000'000);
  QCOMPARE(slow->surface().findChild<QVariantAnimation*>()->state(), QAbstractAnimation::Running);
  QVERIFY(slow->board().grab().toImage() != whole);
  slow->press(Qt::Key_Right);  // whoever is faster than the stroke sees it whole
  slow->press(Qt::Key_Left);
  QCOMPARE(slow->surface().findChild<QVariantAnimation*>()->state(), QAbstractAnimation::Stopped);
  QCOMPARE(slow->board().grab().toImage(), whole);
  const auto usual = atStroke(1);
  QTRY_COMPARE(usual->surface().findChild<QVariantAnimation*>()->state(), QAbstractAnimation::Stopped);
  QCOMPARE(usual->board().grab().toImage(), whole);
}

QList<QAccessible::Event> heard;
void hear(QAccessibleEvent* event) { heard << event->type(); }

void BoardTest::tellsEachStageToAssistiveTechnology() {
  Shown shown("usual");
  QTRY_VERIFY(shown.surface().hasFocus());
  const auto before = QAccessible::installUpdateHandler(hear);
  shown.press(Qt::Key_Space);
  QAccessible::installUpdateHandler(before);
  const QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&shown.surface());
  QCOMPARE(seen->text(QAccessible::Name), shown.surface().spoken());
  QVERIFY(
      seen->text(QAccessible::Description).contains(QStringLiteral("What is the body surface area (BSA)?")));
  if (!QAccessible::isActive())
    QSKIP("nothing listens here: run on xcb with an AT-SPI client for the events");
  QVERIFY(heard.contains(QAccessible::NameChanged));
  QVERIFY(heard.contains(QAccessible::DescriptionChanged));
}

void BoardTest::keepsTheCautionAndTheFacts() {
  Shown shown("usual");
  do {
    for (const QString& text :
         {QStringLiteral("Checks only what was typed in."),
          QStringLiteral("4 years 2 months, 103 cm, 17.2 kg"),
          QStringLiteral("Plover 80 mg by mouth every 12 hours"),
          QStringLiteral("120 mg per m² per dose, every 12 hours"), QStringLiteral("25 mg in 1 mL")})
      QVERIFY2(shown.painted().contains(text), qPrintable(shown.painted()));
    shown.press(Qt::Key_Space);
  } while (shown.surface().place() != shown.story().last());
}

void BoardTest::choosesTheOtherScreen() {
  int first = 0;
  int second = 0;
  QCOMPARE(otherScreen(QList<int*>{&first, &second}, &first), &second);
  QCOMPARE(otherScreen(QList<int*>{&first, &second}, &second), &first);
  QCOMPARE(otherScreen(QList<int*>{&first}, &first), &first);
}

void BoardTest::shoots() {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) QSKIP("no folder for pictures is named");
  const QString only = qEnvironmentVariable("WARDCHALK_SHOTS_OF", QStringLiteral("usual"));
  for (const bool dark : {true, false}) {
    Shown shown(only.toUtf8().constData());
    if (dark == (shown.surface().look() == Scheme::light)) shown.press(Qt::Key_D);
    int number = 0;
    const auto shoot = [&](const QString& what) {
      shown.board().grab().save(
          QStringLiteral("%1/board-%2-%3-%4-%5.png")
              .arg(folder, only, dark ? QStringLiteral("dark") : QStringLiteral("light"))
              .arg(number++, 3, 10, QLatin1Char('0'))
              .arg(what));
    };
    do {
      shoot(
          QStringLiteral("p%1s%2").arg(shown.surface().place().page + 1).arg(shown.surface().place().stage));
      shown.press(Qt::Key_Space);
    } while (shown.surface().place() != shown.story().last());
    shoot(QStringLiteral("end"));
    shown.goTo(StepId::give);
    shown.press(Qt::Key_Space, 3);
    shown.press(Qt::Key_Tab, 2);
    shown.press(Qt::Key_T);
    shoot(QStringLiteral("turned"));
    shown.press(Qt::Key_H);
    shoot(QStringLiteral("keys"));
    shown.press(Qt::Key_H);
    shown.press(Qt::Key_L);
    shoot(QStringLiteral("list"));
  }
}

WARDCHALK_QT_TEST(BoardTest)

}  // namespace wardchalk::ui::test::board_test

#include "board_test.moc"
