#include "ui/practice/line_builder.h"

#include <QAbstractButton>
#include <QLabel>
#include <QListWidget>
#include <QTest>

#include "core/number/decimal_text.h"
#include "core/practice/lines/student_line.h"
#include "core/practice/sessions/set_file.h"
#include "tests/ui/support/qt_class.h"
#include "ui/practice/chain_canvas.h"

namespace wardchalk::ui::line_builder_test {

/// 80 mg from 25 mg in 1 mL, said by hand so that each fact is known.
struct Table {
  Problem problem = [] {
    PracticeSet set;
    set.topics = {Topic::amountLiquid};
    set.seed = 5;
    return problemInSet(set, 0);
  }();
  std::size_t give = [this] {
    for (std::size_t i = 0; i < problem.asks.size(); ++i)
      if (problem.asks[i].step == StepId::give) return i;
    return problem.asks.size();
  }();
};

/// A line put together with the keyboard alone.
class LineBuilderTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { builder_.reset(); }
  void beginsEmptyWithTheKeyboardOnTheFacts();
  void enterAddsAFact();
  void tTurnsTheChosenFactorOver();
  void arrowsChooseAndMove();
  void deleteTakesAFactorOut();
  void rTakesTheRoot();
  void everyKeyWorksFromTheList();
  void unitsStrikeOutAndTheRestIsNamed();
  void neverSaysWhatTheChainComesTo();
  void writesALineThatCanBeReadBack();
  void everyHandleHasAButton();

 private:
  void key(QWidget* on, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QTest::keyClick(on, key, with);
  }
  QListWidget* facts() { return builder_->findChild<QListWidget*>(QStringLiteral("facts")); }
  ChainCanvas* canvas() { return builder_->findChild<ChainCanvas*>(); }
  QString left() { return builder_->findChild<QLabel*>(QStringLiteral("left-over"))->text(); }
  std::size_t factors() { return builder_->work().chain.factors.size(); }
  void addFact(int row) {
    facts()->setCurrentRow(row);
    facts()->setFocus();
    key(facts(), Qt::Key_Return);
  }

  Table table_;
  std::unique_ptr<LineBuilder> builder_;
};

void LineBuilderTest::init() {
  QVERIFY(table_.give < table_.problem.asks.size());
  builder_ = std::make_unique<LineBuilder>(table_.problem.asks[table_.give], table_.problem, 1.0, nullptr);
  builder_->show();
  QVERIFY(QTest::qWaitForWindowActive(builder_.get()));
}

void LineBuilderTest::beginsEmptyWithTheKeyboardOnTheFacts() {
  QCOMPARE(factors(), 0U);
  QTRY_VERIFY(facts()->hasFocus());
  QVERIFY(facts()->count() >= 2);
  QVERIFY(canvas()->spoken().contains(QStringLiteral("empty")));
  key(canvas(), Qt::Key_Right);  // there is nothing to go to
  key(canvas(), Qt::Key_Left);
  QCOMPARE(canvas()->chosen(), -1);
  QVERIFY(!builder_->findChild<QAbstractButton*>(QStringLiteral("write"))->isEnabled());
}

void LineBuilderTest::enterAddsAFact() {
  addFact(0);
  addFact(1);
  QCOMPARE(factors(), 2U);
  QCOMPARE(canvas()->chosen(), 1);
  QVERIFY(builder_->isVisible());
  QVERIFY(builder_->findChild<QAbstractButton*>(QStringLiteral("write"))->isEnabled());
}

void LineBuilderTest::tTurnsTheChosenFactorOver() {
  addFact(0);
  const Factor before = builder_->work().chain.factors[0];
  canvas()->setFocus();
  key(canvas(), Qt::Key_T);
  QCOMPARE(builder_->work().chain.factors[0] == before.turned(), true);
  key(canvas(), Qt::Key_T);
  QCOMPARE(builder_->work().chain.factors[0] == before, true);
}

void LineBuilderTest::arrowsChooseAndMove() {
  addFact(0);
  addFact(1);
  const Factor first = builder_->work().chain.factors[0];
  canvas()->setFocus();
  key(canvas(), Qt::Key_Left);
  QCOMPARE(canvas()->chosen(), 0);
  key(canvas(), Qt::Key_Left);
  QCOMPARE(canvas()->chosen(), 0);
  key(canvas(), Qt::Key_Right, Qt::ShiftModifier);
  QCOMPARE(canvas()->chosen(), 1);
  QVERIFY(builder_->work().chain.factors[1] == first);
  key(canvas(), Qt::Key_Right, Qt::ShiftModifier);
  QVERIFY(builder_->work().chain.factors[1] == first);
}

void LineBuilderTest::deleteTakesAFactorOut() {
  addFact(0);
  addFact(1);
  canvas()->setFocus();
  key(canvas(), Qt::Key_Delete);
  QCOMPARE(factors(), 1U);
  QCOMPARE(canvas()->chosen(), 0);
  key(canvas(), Qt::Key_Delete);
  QCOMPARE(factors(), 0U);
  QCOMPARE(canvas()->chosen(), -1);
  key(canvas(), Qt::Key_T);  // nothing to turn
}

void LineBuilderTest::rTakesTheRoot() {
  addFact(0);
  canvas()->setFocus();
  key(canvas(), Qt::Key_R);
  QVERIFY(builder_->work().chain.rooted);
  QVERIFY(canvas()->spoken().contains(QStringLiteral("square root")));
  key(canvas(), Qt::Key_R);
  QVERIFY(!builder_->work().chain.rooted);
}

/// The buttons name keys; they hold wherever the keyboard is.
void LineBuilderTest::everyKeyWorksFromTheList() {
  key(facts(), Qt::Key_R);
  QVERIFY(!builder_->work().chain.rooted);  // nothing there yet
  addFact(0);
  addFact(1);
  QVERIFY(facts()->hasFocus());
  const ChainWork before = builder_->work();
  key(facts(), Qt::Key_T);
  QVERIFY(builder_->work().chain.factors[1] == before.chain.factors[1].turned());
  key(facts(), Qt::Key_Left, Qt::ShiftModifier);
  QVERIFY(builder_->work().chain.factors[1] == before.chain.factors[0]);
  key(facts(), Qt::Key_Right, Qt::ShiftModifier);
  QVERIFY(builder_->work().chain.factors[0] == before.chain.factors[0]);
  key(facts(), Qt::Key_R);
  QVERIFY(builder_->work().chain.rooted);
  key(facts(), Qt::Key_Delete);
  QCOMPARE(factors(), 1U);
  QCOMPARE(facts()->currentRow(), 1);
}

/// The key's own chain, put together fact by fact, leaves what is wanted; upside down it does not.
void LineBuilderTest::unitsStrikeOutAndTheRestIsNamed() {
  const std::vector<ChainFact> all = chainFacts(table_.problem.key, StepId::give, {});
  const auto* wanted = std::get_if<Solved>(&table_.problem.key.step(StepId::give)->body);
  QVERIFY(wanted);
  for (const Factor& factor : wanted->chain.factors)
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (!all[i].needed) continue;
      const bool same =
          all[i].factor.over.value == factor.over.value && all[i].factor.under.value == factor.under.value;
      const bool turned =
          all[i].factor.under.value == factor.over.value && all[i].factor.over.value == factor.under.value;
      if (!same && !turned) continue;
      addFact(static_cast<int>(i));
      canvas()->setFocus();
      if (!same) key(canvas(), Qt::Key_T);
      break;
    }
  QCOMPARE(factors(), wanted->chain.factors.size());
  QVERIFY2(left().startsWith(QStringLiteral("✓")), qPrintable(left()));
  key(canvas(), Qt::Key_T);
  QVERIFY2(!left().startsWith(QStringLiteral("✓")), qPrintable(left()));
  QVERIFY(!left().isEmpty());
}

void LineBuilderTest::neverSaysWhatTheChainComesTo() {
  for (int i = 0; i < facts()->count(); ++i) {
    addFact(i);
    const ChainState state = stateOf(builder_->work());
    if (factors() < 2 || !state.exact) continue;
    const QString told = left() + canvas()->spoken();
    bool written = false;  // a figure of the papers may be the product of others
    for (int row = 0; row < facts()->count(); ++row)
      written =
          written || facts()->item(row)->text().contains(QString::fromStdString(show(state.value).text));
    if (!written) QVERIFY2(!told.contains(QString::fromStdString(show(state.value).text)), qPrintable(told));
  }
}

void LineBuilderTest::writesALineThatCanBeReadBack() {
  addFact(0);
  addFact(1);
  const std::string line = builder_->line().toStdString();
  QVERIFY(builder_->line().endsWith(QStringLiteral(" = ")));
  const ReadLine read = readStudentLine(line.substr(0, line.size() - 3));
  QVERIFY(std::holds_alternative<StudentLine>(read));
  QVERIFY(std::get<StudentLine>(read).sides[0].value == stateOf(builder_->work()).value);
}

void LineBuilderTest::everyHandleHasAButton() {
  addFact(0);
  addFact(1);
  for (const char* name : {"turn", "root", "left", "right", "remove", "add"}) {
    auto* button = builder_->findChild<QAbstractButton*>(QLatin1String(name));
    QVERIFY2(button && button->isEnabled() && button->focusPolicy() != Qt::NoFocus, name);
    const ChainWork before = builder_->work();
    button->setFocus();
    key(button, Qt::Key_Space);
    QVERIFY2(!(builder_->work() == before) || QLatin1String(name) == QLatin1String("right"), name);
  }
}

WARDCHALK_QT_TEST(LineBuilderTest)

}  // namespace wardchalk::ui::line_builder_test

#include "line_builder_test.moc"
