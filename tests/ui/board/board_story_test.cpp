#include "ui/board/board_story.h"

#include <QTest>
#include <algorithm>

#include "core/check/work_out.h"
#include "tests/support/settled.h"
#include "tests/ui/board/golden_cases.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/stage_words.h"
#include "ui/board/turned_view.h"
#include "ui/working/step_layout.h"

namespace wardchalk::ui::test::board_story_test {

using wardchalk::test::settled;

namespace {

BoardStory storyOf(const char* name) { return BoardStory(sample(name)); }
BoardStory settledStoryOf(const char* name) { return BoardStory(settled(sample(name))); }

const BoardPage& pageOf(const BoardStory& story, StepId id) {
  return *std::find_if(story.pages().begin(), story.pages().end(),
                       [&](const BoardPage& page) { return !page.isVerdict && page.view.step.id == id; });
}

bool tells(const BoardStory& story, StepId id) {
  return std::any_of(story.pages().begin(), story.pages().end(),
                     [&](const BoardPage& page) { return !page.isVerdict && page.view.step.id == id; });
}

/// Every case there is, golden ones and samples.
std::vector<SampleCase> everyCase() {
  std::vector<SampleCase> all = goldenCases();
  all.insert(all.end(), sampleCases().begin(), sampleCases().end());
  return all;
}

std::vector<BoardPlace> placesOf(const BoardStory& story, bool predict) {
  std::vector<BoardPlace> places{story.first()};
  for (BoardPlace next = story.next(places.back(), predict); next != places.back();
       next = story.next(places.back(), predict))
    places.push_back(next);
  return places;
}

QStringList kindsOf(const std::vector<Stage>& stages) {
  static const QStringList names{
      QStringLiteral("question"), QStringLiteral("sum"),     QStringLiteral("factor"),
      QStringLiteral("strike"),   QStringLiteral("root of"), QStringLiteral("product"),
      QStringLiteral("rounded"),  QStringLiteral("sides"),   QStringLiteral("claim"),
      QStringLiteral("truth"),    QStringLiteral("amount"),  QStringLiteral("scale"),
      QStringLiteral("reading")};
  QStringList kinds;
  for (const Stage& stage : stages) kinds << names[static_cast<int>(stage.kind)];
  return kinds;
}

}  // namespace

class BoardStoryTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void namesTheStagesOfEachKindOfStep();
  void hasAsManyStagesAsTheLayout();
  void comesToTheEndAndBackTheSameWay();
  void waitsOnEachQuestionToPredict();
  void keepsWhatWasFound();
  void findsStepsByNumber();
  void leavesTheAmountOutUntilAsked();
  void hidesTheLeastUntilItIsFound();
  void leavesOverWhatATurnedFactorLeaves();
  void saysWhenUnitsDoNotShowIt();
};

void BoardStoryTest::namesTheStagesOfEachKindOfStep() {
  const BoardStory story = storyOf("usual");
  const auto kinds = [&](StepId id) { return kindsOf(pageOf(story, id).stages).join(QStringLiteral(", ")); };
  QCOMPARE(kinds(StepId::bsa), QStringLiteral("question, factor, strike, strike, root of, product, rounded"));
  QCOMPARE(kinds(StepId::limitDose), QStringLiteral("question, factor, factor, strike, product"));
  QCOMPARE(kinds(StepId::compareSingle), QStringLiteral("question, sides, claim, truth"));
  QCOMPARE(kinds(StepId::device), QStringLiteral("question, amount, scale, reading"));
  const BoardStory tablets = storyOf("tablet");
  QCOMPARE(kindsOf(pageOf(tablets, StepId::device).stages).join(QStringLiteral(", ")),
           QStringLiteral("question, amount, reading"));
}

/// Names and layout are made apart and must never differ: a press would uncover nothing, or two things.
void BoardStoryTest::hasAsManyStagesAsTheLayout() {
  int steps = 0;
  for (const SampleCase& each : everyCase()) {
    const BoardStory story(settled(workOut(each.given, each.rules)));
    for (const BoardPage& page : story.pages()) {
      if (page.isVerdict) continue;
      ++steps;
      Metrics metrics{1286, 3, {}, 1};
      metrics.forBoard = true;
      const StepLayout layout = layOutBody(page.view, metrics);
      QCOMPARE(layout.stages, static_cast<int>(page.stages.size()));
      for (int stage = 1; stage < layout.stages; ++stage) {
        const auto at = [&](const auto& things) {
          return std::any_of(things.begin(), things.end(),
                             [&](const auto& thing) { return thing.stage == stage; });
        };
        const Drawing& drawing = layout.drawing;
        if (page.stages[static_cast<std::size_t>(stage)].kind == StageKind::claim)
          continue;  // a band has no sign
        QVERIFY2(at(drawing.runs) || at(drawing.strokes) || at(drawing.bars),
                 qPrintable(QString::fromStdString(each.name) + u' ' + page.view.question));
      }
    }
  }
  QVERIFY(steps > 300);
}

void BoardStoryTest::comesToTheEndAndBackTheSameWay() {
  for (const SampleCase& each : everyCase())
    for (const bool predict : {false, true}) {
      const BoardStory story(workOut(each.given, each.rules));
      const std::vector<BoardPlace> places = placesOf(story, predict);
      std::size_t stages = 0;
      for (const BoardPage& page : story.pages()) stages += page.stages.size() + (predict ? 1 : 0);
      QCOMPARE(places.size(), stages);
      QCOMPARE(places.back(), story.last());
      for (std::size_t i = places.size() - 1; i > 0; --i)
        QCOMPARE(story.back(places[i], predict), places[i - 1]);
      QCOMPARE(story.back(places.front(), predict), places.front());
    }
}

void BoardStoryTest::waitsOnEachQuestionToPredict() {
  const BoardStory story = storyOf("usual");
  QStringList asked;
  for (const BoardPlace& place : placesOf(story, true))
    if (place.predicting) asked << stageWords(story, place).caption;
  QCOMPARE(asked.size(), static_cast<qsizetype>(story.pages().size()));
  QCOMPARE(asked[0], QStringLiteral("How many m²? Predict first."));
  QCOMPARE(asked[1], QStringLiteral("How many mg per dose? Predict first."));
  QCOMPARE(asked.last(), QStringLiteral("Safe, or not? Predict first."));
}

void BoardStoryTest::keepsWhatWasFound() {
  const BoardStory story = storyOf("usual");
  const auto found = [&](BoardPlace place) {
    return story.found(place).join(u'|').replace(QChar::Nbsp, u' ');
  };
  QCOMPARE(found({0, 5, false}), QString());
  QCOMPARE(found({0, 6, false}), QStringLiteral("step 1: 0.70 m²"));
  QCOMPARE(found({1, 3, false}), QStringLiteral("step 1: 0.70 m²"));
  QCOMPARE(found({1, 4, false}), QStringLiteral("step 1: 0.70 m²|step 2: 84 mg per dose"));
}

void BoardStoryTest::findsStepsByNumber() {
  const BoardStory story = storyOf("usual");
  QCOMPARE(story.atNumber(2), (BoardPlace{1, 0, false}));
  QVERIFY(story.pages()[static_cast<std::size_t>(story.atNumber(story.count())->page)].isVerdict);
  QVERIFY(!story.atNumber(0));
  QVERIFY(!story.atNumber(story.count() + 1));
}

void BoardStoryTest::leavesTheAmountOutUntilAsked() {
  int asks = 0;
  for (const SampleCase& each : everyCase()) {
    const Worksheet sheet = workOut(each.given, each.rules);
    if (sheet.verdict != VerdictKind::ask || !sheet.give || settled(sheet).isOpen()) continue;
    ++asks;
    const BoardStory before(sheet);
    const BoardStory after(settled(sheet));
    for (const StepId id : {StepId::give, StepId::device, StepId::rate, StepId::drops, StepId::backCheck}) {
      QVERIFY(!tells(before, id));
      QCOMPARE(tells(after, id), sheet.step(id) != nullptr);
    }
  }
  QVERIFY(asks > 3);
  for (const char* name : {"unsafe", "not covered", "undecided"}) {
    QVERIFY(!tells(settledStoryOf(name), StepId::give));
    QVERIFY(!tells(settledStoryOf(name), StepId::device));
  }
}

void BoardStoryTest::hidesTheLeastUntilItIsFound() {
  const BoardStory story = storyOf("usual");
  const auto marksLow = [&](StepId id) {
    const auto& landmarks = pageOf(story, id).view.landmarks;
    return std::any_of(landmarks.begin(), landmarks.end(),
                       [](const Landmark& one) { return one.kind == Landmark::Kind::low; });
  };
  QVERIFY(!marksLow(StepId::compareSingle));
  QVERIFY(marksLow(StepId::compareLow));
  const BoardStory stated = storyOf("maxima");  // its least amount is worked out before
  QVERIFY(std::any_of(stated.pages().begin(), stated.pages().end(),
                      [](const BoardPage& page) { return page.view.step.id == StepId::lowDose; }));
}

void BoardStoryTest::leavesOverWhatATurnedFactorLeaves() {
  const BoardStory story = storyOf("usual");
  const auto left = [&](StepId id, std::set<int> turned) {
    return leftOverSentence(turnedView(pageOf(story, id).view, turned));
  };
  QCOMPARE(left(StepId::give, {1}), QStringLiteral("Left over: mg²/dose/mL — not mL/dose."));
  QCOMPARE(left(StepId::give, {0}), QStringLiteral("Left over: dose·mL/mg² — not mL/dose."));
  QCOMPARE(left(StepId::limitDose, {1}), QStringLiteral("Left over: mg/m⁴/dose — not mg/dose."));
  QCOMPARE(left(StepId::bsa, {0}), QStringLiteral("Left over: m²/cm — not m²."));
  const StepView turned = turnedView(pageOf(story, StepId::give).view, {1});
  for (const QString& answer :
       {turned.product, turned.conclusion, turned.rounding, turned.sentence, turned.underRoot})
    QVERIFY(answer.isEmpty());
  QCOMPARE(turnedView(turned, {1}).step.body, turnedView(turnedView(turned, {1}), {}).step.body);
}

/// A count over a count has no unit to strike: turned over, the units still come out.
void BoardStoryTest::saysWhenUnitsDoNotShowIt() {
  StepView view = pageOf(storyOf("usual"), StepId::give).view;
  auto& solved = std::get<Solved>(view.step.body);
  solved.chain.factors.push_back({{Number(90), {}, {}, -1}, {Number(100), {}, {}, -1}});
  const StepView turned = turnedView(view, {static_cast<int>(solved.chain.factors.size()) - 1});
  QCOMPARE(
      leftOverSentence(turned),
      QStringLiteral("Left over: mL/dose, as needed. Units alone do not show that a factor is upside down."));
}

WARDCHALK_QT_TEST(BoardStoryTest)

}  // namespace wardchalk::ui::test::board_story_test

#include "board_story_test.moc"
