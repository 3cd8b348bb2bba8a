#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollBar>
#include <QTest>

#include "core/practice/sessions/lesson_words.h"
#include "tests/support/golden_cases.h"
#include "tests/ui/practice/pupil.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/desktops.h"
#include "tests/ui/support/lines_read.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/reading_order.h"
#include "ui/board/board.h"
#include "ui/form/answer_line.h"
#include "ui/form/field_edit.h"
#include "ui/form/form.h"
#include "ui/theme/contrast.h"
#include "ui/working/amount_text.h"
#include "ui/working/amount_widget.h"
#include "ui/working/finding_row.h"
#include "ui/working/flag_widget.h"
#include "ui/working/step_card.h"
#include "ui/working/working_pane.h"

// What a screen reader finds in the windows: lines to their last letter, names that stay, groups, the order
// of the tree, and where the keyboard lands.

namespace wardchalk::ui::readers_test {

using wardchalk::test::goldenFolder;

namespace {

QAccessibleInterface* ask(QWidget* widget) { return QAccessible::queryAccessibleInterface(widget); }

/// The named groups that something is in, from the inside out.
QStringList groupsAround(QWidget* widget) {
  QStringList names;
  for (QAccessibleInterface* one = ask(widget)->parent(); one; one = one->parent())
    if (one->role() == QAccessible::Grouping) names << one->text(QAccessible::Name);
  return names;
}

}  // namespace

class ReadersTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() { nurse_ = std::make_unique<Nurse>(); }
  void cleanup() {
    nurse_.reset();
    QApplication::setPalette(before_);
  }

  void everyLineOfTheFormIsReadWhole();
  void everyLineOfADialogIsReadWhole_data();
  void everyLineOfADialogIsReadWhole();
  void everyLineOfPracticeIsReadWhole();
  void aLineOfQtsOwnDialogIsReadWhole();
  void everyChoiceKeepsItsName();
  void everyNameHoldsItsLabel_data();
  void everyNameHoldsItsLabel();
  void fieldsStandInNamedGroups();
  void choicesOfOneStandInANamedGroup();
  void windowsSayWhatTheyAre();
  void theFormComesBeforeTheWorking();
  void stepsAreNumberedAndInOrder();
  void tabGoesAsTheEyeDoes_data();
  void tabGoesAsTheEyeDoes();
  void tabComesToWhatAnswersARefusal();
  void arrowsWalkWhereTheKeyLands();
  void theRingIsSeenOnEveryFill_data();
  void theRingIsSeenOnEveryFill();
  void theKeysLandOnAnEmptyFormToo();
  void papersAreAStop();

 private:
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  Form* form() { return nurse_->window().findChild<Form*>(); }
  WorkingPane* pane() { return nurse_->window().findChild<WorkingPane*>(); }

  QPalette before_ = QApplication::palette();
  std::unique_ptr<Nurse> nurse_;
};

void ReadersTest::everyLineOfTheFormIsReadWhole() {
  form()->setUnfolded(true);
  int seen = 0;
  QCOMPARE(test::lineFaults(nurse_->window(), seen), QStringList());
  QVERIFY2(seen > 45, qPrintable(QString::number(seen)));
}

void ReadersTest::everyLineOfADialogIsReadWhole_data() {
  QTest::addColumn<QString>("action");
  QTest::addColumn<int>("lines");
  QTest::newRow("picker") << QStringLiteral("choose-reference") << 1;
  QTest::newRow("rules") << QStringLiteral("rules-edit") << 10;
}

void ReadersTest::everyLineOfADialogIsReadWhole() {
  QFETCH(QString, action);
  this->action(action.toLatin1().constData())->trigger();
  QTRY_VERIFY(QApplication::activeWindow() != &nurse_->window() && QApplication::activeWindow());
  int seen = 0;
  QCOMPARE(test::lineFaults(*QApplication::activeWindow(), seen), QStringList());
  QFETCH(int, lines);
  QVERIFY(seen >= lines);
}

void ReadersTest::everyLineOfPracticeIsReadWhole() {
  Pupil pupil;
  int seen = 0;
  QCOMPARE(test::lineFaults(pupil.window(), seen), QStringList());
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 2, 5));
  QCOMPARE(test::lineFaults(pupil.window(), seen), QStringList());
  QVERIFY(seen > 4);
}

void ReadersTest::aLineOfQtsOwnDialogIsReadWhole() {
  QFileDialog dialog(&nurse_->window());
  dialog.setOption(QFileDialog::DontUseNativeDialog);
  dialog.show();
  int seen = 0;
  QCOMPARE(test::lineFaults(dialog, seen), QStringList());
  QVERIFY(seen > 0);
}

void ReadersTest::everyChoiceKeepsItsName() {
  nurse_->fill(test::usualCase());
  form()->focusField(QStringLiteral("order.dose"));
  nurse_->type(QStringLiteral("55 mg"));
  nurse_->enter();
  action("rules-edit")->trigger();
  int seen = 0;
  for (auto* box : nurse_->window().findChildren<QComboBox*>()) {
    ++seen;
    const QString name = ask(box)->text(QAccessible::Name);
    QVERIFY2(!name.isEmpty() && name != box->currentText(), qPrintable(box->objectName() + name));
    for (int place = 0; place < box->count(); ++place) {
      const QSignalBlocker quietly(box);
      box->setCurrentIndex(place);
      QCOMPARE(ask(box)->text(QAccessible::Name), name);
      QCOMPARE(ask(box)->text(QAccessible::Value), box->itemText(place));
    }
  }
  QVERIFY2(seen > 8, qPrintable(QString::number(seen)));
}

void ReadersTest::everyNameHoldsItsLabel_data() {
  QTest::addColumn<QString>("place");
  for (const char* place : {"form", "refused", "asking", "rules", "settings", "picker", "practice"})
    QTest::newRow(place) << QString::fromLatin1(place);
}

/// Who speaks to the computer says what is seen: the label beside a box, the words on a button.
void ReadersTest::everyNameHoldsItsLabel() {
  QFETCH(QString, place);
  QStringList entries = test::usualCase();
  if (place == QStringLiteral("refused")) entries[1] = QStringLiteral("17.2");
  if (place == QStringLiteral("asking")) entries[5] = QStringLiteral("55 mg");
  nurse_->fill(entries);
  form()->setUnfolded(true);
  for (const auto& [where, opening] : {std::pair{"rules", "rules-edit"}, std::pair{"settings", "settings"},
                                       std::pair{"picker", "choose-reference"}})
    if (place == QLatin1String(where)) action(opening)->trigger();
  Pupil pupil;
  if (place == QStringLiteral("practice")) QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 2, 5));
  const auto plain = [](QString text) {
    for (const QChar sign : {QChar(u'&'), QChar(u':'), QChar(u'+'), QChar(0x2026), QChar(0x2212)})
      text.remove(sign);
    return text.simplified().toLower();
  };
  QWidget* ground =
      place == QStringLiteral("practice") ? static_cast<QWidget*>(&pupil.window()) : &nurse_->window();
  int seen = 0;
  const auto hold = [&](QWidget* control, const QString& label) {
    if (!control->isVisible() || plain(label).isEmpty()) return;
    ++seen;
    const QString name = plain(ask(control)->text(QAccessible::Name));
    QVERIFY2(name.contains(plain(label)), qPrintable(label + QStringLiteral(" is called ") + name));
  };
  for (auto* button : ground->findChildren<QAbstractButton*>()) hold(button, button->text());
  for (auto* label : ground->findChildren<QLabel*>())
    if (label->buddy() && label->isVisible()) hold(label->buddy(), label->text());
  QVERIFY2(seen > 8, qPrintable(QString::number(seen)));
}

void ReadersTest::fieldsStandInNamedGroups() {
  form()->setUnfolded(true);
  for (FieldEdit* field : form()->findChildren<FieldEdit*>())
    QVERIFY2(groupsAround(field->stop()).contains(headingOf(field->spec().group)), qPrintable(field->path()));
  QCOMPARE(groupsAround(form()->field(QStringLiteral("reference.high"))->stop()).first(),
           headingOf(FieldGroup::reference));
}

void ReadersTest::choicesOfOneStandInANamedGroup() {
  Pupil pupil;
  int seen = 0;
  const auto look = [&] {
    for (auto* choice : pupil.window().findChildren<QRadioButton*>()) {
      ++seen;
      const QStringList groups = groupsAround(choice);
      QVERIFY2(!groups.isEmpty() && !groups.first().isEmpty(), qPrintable(choice->objectName()));
    }
  };
  look();
  QVERIFY(pupil.begin({QStringLiteral("safe-range")}, 1, 5));
  look();
  QVERIFY2(seen >= 5, qPrintable(QString::number(seen)));
}

void ReadersTest::windowsSayWhatTheyAre() {
  nurse_->fill(test::usualCase());
  QCOMPARE(ask(&nurse_->window())->role(), QAccessible::Window);
  action("board")->trigger();
  auto* board = nurse_->window().findChild<Board*>();
  QVERIFY(board);
  QCOMPARE(ask(board)->role(), QAccessible::Window);
  QVERIFY(!ask(board)->text(QAccessible::Name).isEmpty());
  board->close();
  Pupil pupil;
  QCOMPARE(ask(&pupil.window())->role(), QAccessible::Window);
  QVERIFY(ask(&pupil.window())->text(QAccessible::Name).contains(QStringLiteral("PRACTICE")));
}

/// Also after the window was one column.
void ReadersTest::theFormComesBeforeTheWorking() {
  for (const int width : {1366, 700, 1366}) {
    nurse_->window().resize(width, 768);
    QCoreApplication::processEvents();
    if (width < 900) continue;
    QAccessibleInterface* both = ask(pane())->parent();
    QCOMPARE(ask(form())->parent(), both);
    QVERIFY(both->indexOfChild(ask(form())) < both->indexOfChild(ask(pane())));
  }
}

/// Also when a step comes in between, or a finding before them, after the cards were made.
void ReadersTest::stepsAreNumberedAndInOrder() {
  nurse_->fill(test::usualCase());
  const auto look = [&] {
    QAccessibleInterface* column = ask(pane()->cards().front())->parent();
    QCOMPARE(column->text(QAccessible::Name), QStringLiteral("Working"));
    int number = 0;
    for (int i = 0; i < column->childCount(); ++i) {
      auto* card = qobject_cast<StepCard*>(column->child(i)->object());
      if (qobject_cast<FindingRow*>(column->child(i)->object())) QCOMPARE(number, 0);
      if (!card) continue;
      ++number;
      const QString name = column->child(i)->text(QAccessible::Name);
      QVERIFY2(name.startsWith(QStringLiteral("Step %1. ").arg(number)), qPrintable(name));
      QCOMPARE(card, pane()->cards()[static_cast<std::size_t>(number - 1)]);
    }
    QCOMPARE(static_cast<std::size_t>(number), pane()->cards().size());
    QVERIFY(number > 3);
  };
  look();
  for (const auto& [path, text] : {std::pair{"order.dose", "55 mg"}, std::pair{"child.weight", "37 lb 4 oz"},
                                   std::pair{"order.dose", "800 mg"}, std::pair{"order.dose", "80 mg"}}) {
    form()->focusField(QString::fromLatin1(path));
    nurse_->type(QString::fromLatin1(text));
    nurse_->enter();
    look();
  }
}

void ReadersTest::tabGoesAsTheEyeDoes_data() {
  QTest::addColumn<QString>("part");
  for (const char* part : {"form", "unfolded", "refused", "working", "asking", "picker", "rules"})
    QTest::newRow(part) << QString::fromLatin1(part);
}

void ReadersTest::tabGoesAsTheEyeDoes() {
  QFETCH(QString, part);
  MainWindow& window = nurse_->window();
  window.resize(1366, 768);
  if (part == QStringLiteral("picker") || part == QStringLiteral("rules")) {
    action(part == QStringLiteral("picker") ? "choose-reference" : "rules-edit")->trigger();
    QTRY_VERIFY(QApplication::activeWindow() != &window && QApplication::activeWindow());
    QCoreApplication::processEvents();
    QCOMPARE(test::orderFault(*QApplication::activeWindow()), QString());
    return;
  }
  if (part == QStringLiteral("unfolded")) form()->setUnfolded(true);
  QStringList entries = test::usualCase();
  if (part == QStringLiteral("refused")) entries[1] = QStringLiteral("17.2");
  if (part == QStringLiteral("asking")) entries[5] = QStringLiteral("55 mg");
  if (part != QStringLiteral("form") && part != QStringLiteral("unfolded")) nurse_->fill(entries);
  QCoreApplication::processEvents();
  const bool right = part == QStringLiteral("working") || part == QStringLiteral("asking");
  QTRY_COMPARE(test::orderFault(right ? static_cast<const QWidget&>(*pane()) : *form()), QString());
}

void ReadersTest::tabComesToWhatAnswersARefusal() {
  nurse_->fill({QString(), QStringLiteral("17.2")});
  FieldEdit* weight = form()->field(QStringLiteral("child.weight"));
  QTRY_COMPARE(weight->answer()->buttons().size(), 2);
  for (QPushButton* button : weight->answer()->buttons())
    QVERIFY(button->accessibleName().startsWith(QStringLiteral("write 17.2 ")));
  form()->focusField(QStringLiteral("child.weight"));
  for (QWidget* next : {form()->field(QStringLiteral("child.age"))->stop(),
                        static_cast<QWidget*>(weight->answer()->buttons().first())}) {
    nurse_->press(Qt::Key_Tab);
    QCOMPARE(QApplication::focusWidget(), next);
  }
}

void ReadersTest::arrowsWalkWhereTheKeyLands() {
  nurse_->fill(test::usualCase());
  for (const Qt::Key key : {Qt::Key_F6, Qt::Key_F7}) {
    form()->focusLast();
    nurse_->press(key);
    QCOMPARE(QApplication::focusWidget(), pane()->flag());
    nurse_->press(Qt::Key_Up);  // there is nothing above
    QCOMPARE(QApplication::focusWidget(), pane()->flag());
    nurse_->press(Qt::Key_Down);
    QCOMPARE(QApplication::focusWidget(), pane()->amount()->text());
    QList<QWidget*> met;
    for (int presses = 0; presses < 60; ++presses) {
      nurse_->press(Qt::Key_Down);
      if (met.contains(QApplication::focusWidget())) break;
      met << QApplication::focusWidget();
    }
    QCOMPARE(met.last(), pane()->cards().back());
    nurse_->press(Qt::Key_Home);
    QCOMPARE(QApplication::focusWidget(), pane()->flag());
    nurse_->press(Qt::Key_End);
    QCOMPARE(QApplication::focusWidget(), pane()->cards().back());
    nurse_->press(Qt::Key_Home);
    auto* bar = pane()->findChild<QScrollBar*>();
    for (auto* one : pane()->findChildren<QScrollBar*>())
      if (one->orientation() == Qt::Vertical && one->maximum() > 0) bar = one;
    bar->setValue(0);
    nurse_->press(Qt::Key_PageDown);
    QVERIFY(bar->value() > 0);
    nurse_->press(Qt::Key_PageUp);
    QCOMPARE(bar->value(), 0);
  }
}

void ReadersTest::theRingIsSeenOnEveryFill_data() {
  QTest::addColumn<QString>("name");
  QTest::addColumn<int>("desktop");
  for (const char* name : {"safe-per-surface-liquid", "ask-below-usual", "unsafe-day-in-range-dose-not",
                           "not-covered-age", "undecided-age-needs-months"})
    for (std::size_t i = 0; i < desktops.size(); ++i)
      QTest::addRow("%s-%s", name, desktops[i].name) << QString::fromLatin1(name) << static_cast<int>(i);
}

/// Down from the upper edge two pixels or more that stand out 3:1 from the fill; on a coloured one the fill
/// is seen before them too, since what lies round the flag may have their colour. Source: WCAG 2.2, 1.4.11
/// and 2.4.13.
void ReadersTest::theRingIsSeenOnEveryFill() {
  QFETCH(QString, name);
  QFETCH(int, desktop);
  QApplication::setPalette(paletteOf(desktops[static_cast<std::size_t>(desktop)]));
  nurse_ = std::make_unique<Nurse>();
  QVERIFY(nurse_->window().openFile(QString::fromStdString(goldenFolder().string()) + u'/' + name +
                                    QStringLiteral(".case.json")));
  const bool coloured = pane()->flag()->verdict() != VerdictKind::undecided;
  const auto outstanding = [&] {
    const QImage flag = pane()->flag()->grab().toImage();
    const int across = flag.width() / 3;
    const int wordsBegin = 9;
    const auto standsOut = [&](int y) {
      return contrastRatio(flag.pixelColor(across, y), flag.pixelColor(across, wordsBegin)) >= 3;
    };
    if (coloured && standsOut(1)) return false;
    const int begin = coloured ? 2 : 0;  // where no fill is, a dashed edge lies further in
    const int end = coloured ? wordsBegin : 3;
    int rows = 0;
    for (int y = begin; y < end && rows < 2; ++y) rows = standsOut(y) ? rows + 1 : 0;
    return rows >= 2;
  };
  QVERIFY(!outstanding());
  nurse_->press(Qt::Key_F7);
  QVERIFY(pane()->flag()->hasFocus());
  QTRY_VERIFY(outstanding());
}

void ReadersTest::theKeysLandOnAnEmptyFormToo() {
  for (const Qt::Key key : {Qt::Key_F6, Qt::Key_F7}) {
    form()->focusLast();
    nurse_->press(key);
    QVERIFY(QApplication::focusWidget() && QApplication::focusWidget()->isVisible());
    QVERIFY(pane()->isAncestorOf(QApplication::focusWidget()));
  }
  nurse_->press(Qt::Key_F6);
  QVERIFY(form()->isAncestorOf(QApplication::focusWidget()));
}

void ReadersTest::papersAreAStop() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 1, 5));
  QVERIFY(pupil.walkTo(QStringLiteral("papers")));
  const QString name = ask(QApplication::focusWidget())->text(QAccessible::Name);
  QVERIFY2(name.contains(QStringLiteral(" kg")), qPrintable(name));
}

WARDCHALK_QT_TEST(ReadersTest)

}  // namespace wardchalk::ui::readers_test

#include "readers_test.moc"
