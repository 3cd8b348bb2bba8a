#include <QAbstractItemModelTester>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <algorithm>

#include "core/practice/sessions/lesson_words.h"
#include "core/practice/sessions/set_file.h"
#include "core/record/text_file.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/form/form.h"
#include "ui/practice/line_builder.h"
#include "ui/practice/practice_window.h"
#include "ui/record/cases_window.h"
#include "ui/record/import_report.h"
#include "ui/record/reference_picker.h"
#include "ui/record/rules_editor.h"
#include "ui/record/second_check_view.h"
#include "ui/shell/case_document.h"

namespace wardchalk::ui::models_test {

namespace {

QString demo(const char* name) {
  return QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/demo/") + QLatin1String(name);
}

}  // namespace

/// Holds every model of the program to the rules that views rely on. It goes before the windows: models empty
/// themselves at their very end, when their views are gone.
class Examiner {
 public:
  /// The models of a window and of the boxes in it; how many of them are looked at now.
  int watch(const QWidget& window) {
    for (const QAbstractItemView* view : window.findChildren<QAbstractItemView*>()) add(view->model());
    for (const QComboBox* box : window.findChildren<QComboBox*>()) add(box->model());
    return static_cast<int>(watched_.size());
  }

 private:
  void add(QAbstractItemModel* model) {
    if (!model || watched_.contains(model)) return;
    watched_ << model;
    new QAbstractItemModelTester(model, QAbstractItemModelTester::FailureReportingMode::QtTest, &testers_);
    for (const int row : {-1, model->rowCount(), model->rowCount() + 7})
      for (const int column : {-1, 0, model->columnCount()})
        for (const int role : {static_cast<int>(Qt::DisplayRole), static_cast<int>(Qt::ToolTipRole)})
          (void)model->data(model->index(row, column), role);
    for (const int section : {-1, model->columnCount(), 1000})
      (void)model->headerData(section, Qt::Horizontal, Qt::DisplayRole);
  }

  QSet<QAbstractItemModel*> watched_;
  QObject testers_;
};

/// Lists and tables while they are filled, emptied and filled again, and while nothing is in them.
class ModelsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() {
    nurse_ = std::make_unique<Nurse>();
    examiner_ = std::make_unique<Examiner>();
  }
  void cleanup() {
    examiner_.reset();
    nurse_.reset();
  }

  void copyingFromAnEmptyListCopiesNothing_data();
  void copyingFromAnEmptyListCopiesNothing();
  void theCasesKeepTheirOrder();
  void thePickerKeepsItsOrder();
  void theReportKeepsItsOrder();
  void theRulesKeepTheirOrder();
  void theComparisonKeepsItsOrder();
  void theFormAndTheBoardKeepTheirOrder();
  void practiceKeepsItsOrder();

 private:
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  template <typename Window>
  Window* opened(const char* name) {
    action(name)->trigger();
    auto* window = nurse_->window().findChild<Window*>();
    if (!window) qFatal("it does not open");
    return window;
  }

  std::unique_ptr<Nurse> nurse_;
  std::unique_ptr<Examiner> examiner_;
};

void ModelsTest::copyingFromAnEmptyListCopiesNothing_data() {
  QTest::addColumn<QString>("place");
  for (const char* place : {"cases", "found", "bands"}) QTest::newRow(place) << QString::fromLatin1(place);
}

/// A click into the empty list and Ctrl+C, which asks the model for the text of a row that is not there.
void ModelsTest::copyingFromAnEmptyListCopiesNothing() {
  QFETCH(QString, place);
  nurse_->fill({QStringLiteral("103 cm")});
  QWidget* window = place == QStringLiteral("cases")
                        ? static_cast<QWidget*>(opened<CasesWindow>("several-cases"))
                        : opened<ReferencePicker>("choose-reference");
  window->activateWindow();
  QVERIFY(hasKeyboard(window));
  auto* view = window->findChild<QAbstractItemView*>(place);
  QVERIFY(view);
  QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, QPoint(20, 20));
  QTest::keyClick(view, Qt::Key_C, Qt::ControlModifier);
  for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Down, Qt::Key_End, Qt::Key_PageUp, Qt::Key_A, Qt::Key_F2})
    QTest::keyClick(view, key);
  QTest::mouseDClick(view->viewport(), Qt::LeftButton, {}, QPoint(20, 20));
  QCOMPARE(nurse_->window().editor().draft().text("child.height"), std::string("103 cm"));
}

void ModelsTest::theCasesKeepTheirOrder() {
  auto* cases = opened<CasesWindow>("several-cases");
  QVERIFY(examiner_->watch(*cases) > 0);
  const auto settled = [&] { return !cases->isBusy(); };
  cases->read({demo("class_set.csv")});
  QVERIFY(QTest::qWaitFor(settled));
  QVERIFY(cases->model().rowCount() > 1);
  cases->select(cases->model().rowCount() - 1);
  cases->read({});
  QVERIFY(QTest::qWaitFor(settled));
  QCOMPARE(cases->model().rowCount(), 0);
  QCOMPARE(cases->currentRow(), -1);
  cases->step(1);
  cases->step(-1);
  cases->read({demo("class_set.csv"), demo("no such file.csv")});
  QVERIFY(QTest::qWaitFor(settled));
  QVERIFY(cases->model().rowCount() > 1);
  const int refused = cases->model().rowCount() - 1;
  QVERIFY(!cases->model().index(refused, CasesModel::reason).data().toString().isEmpty());
}

void ModelsTest::thePickerKeepsItsOrder() {
  auto* picker = opened<ReferencePicker>("choose-reference");
  QVERIFY(examiner_->watch(*picker) > 1);
  const auto text = readTextFile(nativePath(demo("reference_list.json")));
  QVERIFY(text);
  const auto list = readReferenceList(*text);
  QVERIFY(list);
  auto* found = picker->findChild<QListWidget*>(QStringLiteral("found"));
  for (int round = 0; round < 2; ++round) {
    picker->setList(*list, QStringLiteral("list.json"));
    QVERIFY(found->count() > 1);
    for (int row = 0; row < found->count(); ++row) found->setCurrentRow(row);
    picker->search(QStringLiteral("no such bird"));
    QCOMPARE(found->count(), 0);
    picker->search(QString());
    QVERIFY(found->count() > 1);
    picker->setList({}, QString());
    QCOMPARE(found->count(), 0);
  }
}

void ModelsTest::theReportKeepsItsOrder() {
  const auto import =
      importReferenceList("medicine,route,high\r\nPlover,oral,\"1,5 mg\"\r\nWren,by post,\r\n");
  QVERIFY(import && import->refused.size() == 2);
  auto* report = new ImportReport(*import, {2026, 3, 1}, &nurse_->window());
  report->show();
  QVERIFY(examiner_->watch(*report) > 0);
}

void ModelsTest::theRulesKeepTheirOrder() {
  auto* editor = opened<RulesEditor>("rules-edit");
  QVERIFY(examiner_->watch(*editor) > 5);
  for (QComboBox* box : editor->findChildren<QComboBox*>())
    for (int i = 0; i < box->count(); ++i) box->setCurrentIndex(i);
  editor->findChild<QPushButton*>(QStringLiteral("syringe-add"))->click();
  const int before = examiner_->watch(*editor);
  QVERIFY(before > 5);
}

void ModelsTest::theComparisonKeepsItsOrder() {
  nurse_->fill(test::usualCase());
  action("second-check-begin")->trigger();
  QStringList other = test::usualCase();
  other[test::weightPlace] = QStringLiteral("17.4 kg");
  nurse_->fill(other);
  for (int round = 0; round < 3; ++round) {
    action("second-check-compare")->trigger();
    auto* view = nurse_->window().findChild<SecondCheckView*>();
    QVERIFY(view);
    QVERIFY(examiner_->watch(*view) > 0);
    QTest::keyClick(view->findChild<QTableView*>(), Qt::Key_C, Qt::ControlModifier);
    view->empty();
    QTest::keyClick(view->findChild<QTableView*>(), Qt::Key_C, Qt::ControlModifier);
    view->findChild<QPushButton*>(QStringLiteral("second-correct-second"))->click();
  }
}

void ModelsTest::theFormAndTheBoardKeepTheirOrder() {
  QStringList little = test::usualCase();
  little[5] = QStringLiteral("55 mg");
  nurse_->fill(little);
  QVERIFY(examiner_->watch(nurse_->window()) > 0);  // the ways in which a question is settled
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
  nurse_->fill(test::usualCase());
  nurse_->dialogs().answer = Unsaved::discard;
  action("board")->trigger();
  auto* board = nurse_->window().findChild<Board*>();
  QVERIFY(board);
  QVERIFY(examiner_->watch(*board) > 0);
  QTest::keyClick(board, Qt::Key_L);
  board->hide();
  action("new-child")->trigger();
  nurse_->fill(test::usualCase());
}

void ModelsTest::practiceKeepsItsOrder() {
  PracticeSet set;
  set.topics = {Topic::amountLiquid};
  const Problem problem = problemInSet(set, 0);
  const auto chain = std::find_if(problem.asks.begin(), problem.asks.end(), [&](const Ask& ask) {
    return !ask.isVerdict() && !lineFacts(ask, problem).empty();
  });
  QVERIFY(chain != problem.asks.end());
  auto* builder = new LineBuilder(*chain, problem, 1, &nurse_->window());
  builder->show();
  QVERIFY(examiner_->watch(*builder) > 0);
  auto* facts = builder->findChild<QListWidget*>(QStringLiteral("facts"));
  facts->setCurrentRow(-1);
  for (const Qt::Key key : {Qt::Key_C, Qt::Key_T, Qt::Key_Delete, Qt::Key_R})
    QTest::keyClick(facts, key, key == Qt::Key_C ? Qt::ControlModifier : Qt::NoModifier);
  action("practice")->trigger();
  PracticeWindow* practice = nullptr;
  for (QWidget* top : QApplication::topLevelWidgets())
    if (auto* one = qobject_cast<PracticeWindow*>(top)) practice = one;
  QVERIFY(practice);
  QVERIFY(examiner_->watch(*practice) > 1);
}

WARDCHALK_QT_TEST(ModelsTest)

}  // namespace wardchalk::ui::models_test

#include "models_test.moc"
