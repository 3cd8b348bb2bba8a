#include <QTest>
#include <algorithm>

#include "core/check/deciding_steps.h"
#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "tests/support/settled.h"
#include "tests/ui/board/golden_cases.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/board/board_surface.h"
#include "ui/board/step_list.h"

namespace wardchalk::ui::test::board_length_test {

using wardchalk::test::settled;

namespace {

std::vector<SampleCase> everyCase() {
  std::vector<SampleCase> all = goldenCases();
  all.insert(all.end(), sampleCases().begin(), sampleCases().end());
  return all;
}

/// A board on a screen of its own, without motion.
class OnScreen {
 public:
  explicit OnScreen(const SampleCase& shown) : board_(settled(workOut(shown.given, shown.rules)), 0) {
    board_.resize(1366, 768);
    board_.show();
    board_.surface()->setFocus();
  }

  BoardSurface& surface() { return *board_.surface(); }
  const BoardStory& story() { return board_.story(); }
  StepList& steps() { return *board_.steps(); }
  void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QTest::keyClick(&surface(), key, with);
  }

 private:
  Board board_;
};

/// The first case with a flow to set, of which a working in short leaves something out.
const SampleCase& infusion(const std::vector<SampleCase>& all) {
  return *std::find_if(all.begin(), all.end(), [](const SampleCase& one) {
    const Worksheet sheet = workOut(one.given, one.rules);
    return sheet.step(StepId::rate) && decidingSteps(sheet).size() < sheet.steps.size();
  });
}

bool tells(const BoardStory& story, StepId id) {
  return std::any_of(story.pages().begin(), story.pages().end(),
                     [&](const BoardPage& page) { return !page.isVerdict && page.view.step.id == id; });
}

double highestRun(const BoardSurface& surface) {
  double high = 0;
  for (const Run& run : surface.frame().drawing.runs)
    high = std::max(high, static_cast<double>(run.type.pixels));
  return high;
}

bool liesOnScreen(const BoardSurface& surface) {
  const QRectF screen = QRectF(surface.rect()).adjusted(-1, -1, 1, 1);
  const auto inside = [&](const Drawing& drawing) {
    return std::all_of(drawing.runs.begin(), drawing.runs.end(),
                       [&](const Run& run) { return screen.contains(run.rect); });
  };
  return inside(surface.frame().drawing) && inside(surface.body().drawing);
}

}  // namespace

/// How long the board's working is, and how large.
class BoardLengthTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void inShortTheStepsThatDecideAreTold();
  void everyNumberOfAShortWorkingIsFound();
  void staysAtItsQuestion();
  void saysWhereNothingIsShorter();
  void thePlusKeyEnlarges();
  void theWorkingStaysLargeAndNothingIsCutOff();
  void theFactsHoldWhatTheWorkingUses();
};

void BoardLengthTest::inShortTheStepsThatDecideAreTold() {
  const std::vector<SampleCase> all = everyCase();
  OnScreen board(infusion(all));
  const std::size_t full = board.story().pages().size();
  const int count = board.story().count();
  board.press(Qt::Key_I);
  QVERIFY(board.story().isInShort());
  QVERIFY(board.story().pages().size() < full);
  QCOMPARE(board.steps().count(), static_cast<int>(board.story().pages().size()));
  QCOMPARE(board.story().count(), count);  // steps keep their numbers
  QVERIFY(tells(board.story(), StepId::rate));
  QCOMPARE(board.surface().spoken(), QStringLiteral("In short: the steps that decide"));
  const Worksheet& sheet = board.story().sheet();
  for (const Check& check : sheet.checks)
    if (check.status == CheckStatus::outside) QVERIFY(tells(board.story(), stepOf(check.id)));
  board.press(Qt::Key_I);
  QCOMPARE(board.story().pages().size(), full);
}

/// A number that a shown step takes from another is worked out before it.
void BoardLengthTest::everyNumberOfAShortWorkingIsFound() {
  int shorter = 0;
  for (const SampleCase& each : everyCase()) {
    BoardStory story(settled(workOut(each.given, each.rules)));
    if (!story.tellInShort(true)) continue;
    ++shorter;
    for (const BoardPage& page : story.pages()) {
      const auto* solved = std::get_if<Solved>(&page.view.step.body);
      if (page.isVerdict || !solved) continue;
      for (const Factor& factor : solved->chain.factors)
        for (const Term* term : {&factor.over, &factor.under}) {
          if (term->origin.kind != Origin::Kind::step) continue;
          const auto from = std::find(stepIds.begin(), stepIds.end(), std::string_view(term->origin.name));
          QVERIFY(tells(story, static_cast<StepId>(from - stepIds.begin())));
        }
    }
  }
  QVERIFY(shorter > 20);
}

void BoardLengthTest::staysAtItsQuestion() {
  const std::vector<SampleCase> all = everyCase();
  OnScreen board(infusion(all));
  for (const BoardPage& page : board.story().pages())
    if (!page.isVerdict && page.view.step.id == StepId::rate) {
      board.surface().goTo(*board.story().atNumber(page.number));
      break;
    }
  const int number = board.story().page(board.surface().place()).number;
  board.press(Qt::Key_I);
  QCOMPARE(board.story().page(board.surface().place()).number, number);
  QCOMPARE(board.surface().place().stage, 0);
  board.press(Qt::Key_I);
  QCOMPARE(board.story().page(board.surface().place()).number, number);
}

void BoardLengthTest::saysWhereNothingIsShorter() {
  for (const SampleCase& each : everyCase()) {
    const Worksheet sheet = workOut(each.given, each.rules);
    if (sheet.steps.empty() || decidingSteps(sheet).size() < sheet.steps.size()) continue;
    OnScreen board(each);
    board.press(Qt::Key_I);
    QVERIFY(!board.story().isInShort());
    QCOMPARE(board.surface().spoken(), QStringLiteral("Every step decides: there is nothing shorter."));
    return;
  }
  QFAIL("every case can be told in short");
}

void BoardLengthTest::thePlusKeyEnlarges() {
  OnScreen board(*std::ranges::find(sampleCases(), "usual", &SampleCase::name));
  const double usual = highestRun(board.surface());
  board.press(Qt::Key_Plus);
  QCOMPARE(board.surface().chosenSize(), 110);
  QVERIFY(highestRun(board.surface()) > usual);
  QCOMPARE(board.surface().spoken(), QStringLiteral("Size %1 %").arg(board.surface().shownSize()));
  board.press(Qt::Key_Plus, Qt::ControlModifier);
  board.press(Qt::Key_Equal, Qt::ControlModifier);
  QCOMPARE(board.surface().chosenSize(), 130);
  board.press(Qt::Key_Minus);
  QCOMPARE(board.surface().chosenSize(), 120);
  board.press(Qt::Key_0, Qt::ControlModifier);
  QCOMPARE(board.surface().chosenSize(), 100);
  QCOMPARE(highestRun(board.surface()), usual);
  board.press(Qt::Key_Minus);
  QCOMPARE(board.surface().chosenSize(), 100);  // never smaller than a room can read
  for (int i = 0; i < 15; ++i) board.press(Qt::Key_Plus);
  QCOMPARE(board.surface().chosenSize(), 200);
  QVERIFY(board.surface().shownSize() < 200);
  QCOMPARE(board.surface().spoken(),
           QStringLiteral("Size %1 %: this page has no room for more").arg(board.surface().shownSize()));
}

/// At the greatest size, on every page of every sample.
void BoardLengthTest::theWorkingStaysLargeAndNothingIsCutOff() {
  for (const SampleCase& each : sampleCases()) {
    OnScreen board(each);
    std::vector<double> usual;
    for (std::size_t page = 0; page < board.story().pages().size(); ++page) {
      board.surface().goTo({static_cast<int>(page), 0, false});
      usual.push_back(board.surface().body().scale);
    }
    for (int i = 0; i < 10; ++i) board.press(Qt::Key_Plus);
    for (std::size_t page = 0; page < board.story().pages().size(); ++page) {
      board.surface().goTo({static_cast<int>(page), 0, false});
      QVERIFY2(board.surface().body().scale >= 0.75 * usual[page],
               qPrintable(QStringLiteral("%1, page %2: %3 of %4, size %5")
                              .arg(QString::fromStdString(each.name))
                              .arg(page)
                              .arg(board.surface().body().scale)
                              .arg(usual[page])
                              .arg(board.surface().shownSize())));
      QVERIFY2(liesOnScreen(board.surface()), each.name.c_str());
    }
  }
}

namespace {

/// How a number that a chain takes from a paper stands there: in parts (3 ft 5 in) where it was put together.
std::vector<Number> asEntered(const Step& step, const Term& term) {
  for (const Sum& sum : step.sums) {
    if (sum.total.value != term.value) continue;
    std::vector<Number> parts;
    for (const Quantity& part : sum.parts) parts.push_back(part.value);
    return parts;
  }
  return {term.value};
}

/// "every 8 hours" stands in the strip; that it is three doses a day is for the working to tell.
bool isSchedule(const Term& term) { return term.origin.text().ends_with("schedule"); }

/// The numbers of a step's chain that stand on a paper of the case.
std::vector<Number> takenFromPapers(const Step& step) {
  std::vector<Number> taken;
  const auto* solved = std::get_if<Solved>(&step.body);
  if (!solved) return taken;
  for (const Factor& factor : solved->chain.factors)
    for (const Term* term : {&factor.over, &factor.under}) {
      if (term->origin.kind != Origin::Kind::field || term->isPlainOne() || isSchedule(*term)) continue;
      for (const Number& number : asEntered(step, *term)) taken.push_back(number);
    }
  return taken;
}

QString factsOf(const BoardStory& story) {
  QString facts;
  for (const Fact& fact : story.facts()) facts += QString::fromStdString(fact.label + " " + fact.text + "\n");
  return facts;
}

}  // namespace

/// Every number that a chain takes from a paper stands in the strip, as it was entered.
void BoardLengthTest::theFactsHoldWhatTheWorkingUses() {
  QStringList missing;
  int looked = 0;
  for (const SampleCase& each : everyCase()) {
    const BoardStory story(settled(workOut(each.given, each.rules)));
    for (const BoardPage& page : story.pages()) {
      if (page.isVerdict) continue;
      for (const Number& number : takenFromPapers(page.view.step)) {
        ++looked;
        const QString text = QString::fromStdString(show(number, Grouping::commas).text);
        if (!factsOf(story).contains(text)) missing << QString::fromStdString(each.name + ": ") + text;
      }
    }
  }
  QVERIFY(looked > 300);
  missing.removeDuplicates();
  QVERIFY2(missing.isEmpty(), qPrintable(missing.join(QStringLiteral("; "))));
}

WARDCHALK_QT_TEST(BoardLengthTest)

}  // namespace wardchalk::ui::test::board_length_test

#include "board_length_test.moc"
