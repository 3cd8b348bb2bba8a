#include <QAccessible>
#include <QComboBox>
#include <QIntValidator>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QTest>
#include <QVBoxLayout>
#include <array>

#include "tests/ui/support/lines_read.h"
#include "tests/ui/support/qt_class.h"
#include "ui/access/answers.h"

namespace wardchalk::ui::answers_test {

namespace {

QAccessibleInterface* ask(QWidget& widget) { return QAccessible::queryAccessibleInterface(&widget); }

}  // namespace

/// What assistive technology is answered by lines, boxes and what has a role of its own.
class AnswersTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void initTestCase() { answerReaders(); }

  void aLineIsReadToItsLastLetter_data();
  void aLineIsReadToItsLastLetter();
  void afterTheLastLetterThereIsNone_data();
  void afterTheLastLetterThereIsNone();
  void aLineIsWrittenTo_data();
  void aLineIsWrittenTo();
  void whatOnlyTellsIsNotWrittenTo();
  void whatIsNotToBeSeenIsNotRead();
  void selectionAndCaretAreTheLines();
  void lettersLieWhereTheyAreDrawn();
  void aNumberIsReadAndSet();
  void aChoiceKeepsItsName();
  void aChoiceOpensItsList();
  void aRoleIsGivenWithItsName();
  void aRoleCountsAlsoForWhoAskedBefore();
};

void AnswersTest::aLineIsReadToItsLastLetter_data() {
  QTest::addColumn<QString>("text");
  for (const char* text : {"", "8", "80", "103", "17.2 kg", "120 mg/m²/dose", "זקזק 5 mg", "a  b "})
    QTest::newRow(text) << QString::fromUtf8(text);
}

void AnswersTest::aLineIsReadToItsLastLetter() {
  QFETCH(QString, text);
  QLineEdit line(text);
  QCOMPARE(test::runFault(line, text), QString());
  QCOMPARE(ask(line)->text(QAccessible::Value), text);
  QCOMPARE(ask(line)->role(), QAccessible::EditableText);
}

void AnswersTest::afterTheLastLetterThereIsNone_data() {
  QTest::addColumn<int>("by");
  for (const auto by : {QAccessible::CharBoundary, QAccessible::WordBoundary, QAccessible::SentenceBoundary})
    QTest::addRow("%d", by) << static_cast<int>(by);
}

void AnswersTest::afterTheLastLetterThereIsNone() {
  QFETCH(int, by);
  QLineEdit line(QStringLiteral("80 mg"));
  int start = -1, end = -1;
  const auto boundary = static_cast<QAccessible::TextBoundaryType>(by);
  QCOMPARE(ask(line)->textInterface()->textAtOffset(5, boundary, &start, &end), QString());
  QCOMPARE(start, 5);
  QCOMPARE(end, 5);
}

void AnswersTest::aLineIsWrittenTo_data() {
  QTest::addColumn<int>("start");
  QTest::addColumn<int>("end");
  QTest::addColumn<QString>("with");
  QTest::addColumn<QString>("after");
  const auto row = [](const char* name, int start, int end, const char* with, const char* after) {
    QTest::newRow(name) << start << end << QString::fromLatin1(with) << QString::fromLatin1(after);
  };
  row("whole", 0, 5, "55 mg", "55 mg");
  row("whole, to the end", 0, -1, "55 mg", "55 mg");
  row("a letter", 0, 1, "9", "90 mg");
  row("before the first", 0, 0, "1", "180 mg");
  row("behind the last", 5, 5, "/kg", "80 mg/kg");
  row("nothing in the place of some", 2, 5, "", "80");
  row("beyond the end", 3, 99, "g", "80 g");
  row("the wrong way round", 3, 1, "k", "80 kmg");
}

void AnswersTest::aLineIsWrittenTo() {
  QFETCH(int, start);
  QFETCH(int, end);
  QFETCH(QString, with);
  QLineEdit line(QStringLiteral("80 mg"));
  ask(line)->editableTextInterface()->replaceText(start, end, with);
  QTEST(line.text(), "after");
}

void AnswersTest::whatOnlyTellsIsNotWrittenTo() {
  QLineEdit line(QStringLiteral("Plover"));
  line.setReadOnly(true);
  QAccessibleInterface* one = ask(line);
  one->editableTextInterface()->insertText(0, QStringLiteral("not "));
  one->editableTextInterface()->deleteText(0, 3);
  one->setText(QAccessible::Value, QStringLiteral("Heron"));
  QCOMPARE(line.text(), QStringLiteral("Plover"));
  QVERIFY(one->state().readOnly && !one->state().editable);
  QLineEdit number;
  number.setValidator(new QIntValidator(0, 9, &number));
  ask(number)->setText(QAccessible::Value, QStringLiteral("x"));
  QCOMPARE(number.text(), QString());
  ask(number)->setText(QAccessible::Value, QStringLiteral("7"));
  QCOMPARE(number.text(), QStringLiteral("7"));
}

void AnswersTest::whatIsNotToBeSeenIsNotRead() {
  QLineEdit line(QStringLiteral("heron"));
  line.setEchoMode(QLineEdit::Password);
  QAccessibleTextInterface* text = ask(line)->textInterface();
  QCOMPARE(text->text(0, -1), QString());
  QCOMPARE(text->characterCount(), 0);
  QVERIFY(!ask(line)->text(QAccessible::Value).contains(u'h'));
  QVERIFY(ask(line)->state().passwordEdit);
}

void AnswersTest::selectionAndCaretAreTheLines() {
  QLineEdit line(QStringLiteral("17.2 kg"));
  QAccessibleTextInterface* text = ask(line)->textInterface();
  QCOMPARE(text->selectionCount(), 0);
  text->addSelection(0, 4);
  QCOMPARE(line.selectedText(), QStringLiteral("17.2"));
  int start = -1, end = -1;
  text->selection(0, &start, &end);
  QCOMPARE(start, 0);
  QCOMPARE(end, 4);
  text->removeSelection(0);
  QVERIFY(!line.hasSelectedText());
  text->setCursorPosition(2);
  QCOMPARE(line.cursorPosition(), 2);
  QCOMPARE(text->cursorPosition(), 2);
}

void AnswersTest::lettersLieWhereTheyAreDrawn() {
  QLineEdit line(QStringLiteral("103 cm"));
  line.show();
  QVERIFY(QTest::qWaitForWindowExposed(&line));
  QAccessibleTextInterface* text = ask(line)->textInterface();
  int before = -1;
  for (int at = 0; at < 6; ++at) {
    const QRect letter = text->characterRect(at);
    QVERIFY(letter.left() > before && letter.width() > 0);
    QVERIFY(ask(line)->rect().contains(letter.center()));
    QCOMPARE(text->offsetAtPoint(letter.center() - QPoint(letter.width() / 4, 0)), at);
    before = letter.left();
  }
  QVERIFY(text->characterRect(6).isEmpty());
}

void AnswersTest::aNumberIsReadAndSet() {
  QSpinBox box;
  box.setRange(1, 60);
  box.setValue(15);
  box.setAccessibleName(QStringLiteral("How many"));
  QAccessibleInterface* one = ask(box);
  QCOMPARE(test::runFault(box, QStringLiteral("15")), QString());
  QCOMPARE(one->text(QAccessible::Name), QStringLiteral("How many"));
  QCOMPARE(one->role(), QAccessible::SpinBox);
  QCOMPARE(one->valueInterface()->currentValue().toInt(), 15);
  QCOMPARE(one->valueInterface()->minimumValue().toInt(), 1);
  QCOMPARE(one->valueInterface()->maximumValue().toInt(), 60);
  one->valueInterface()->setCurrentValue(20);
  QCOMPARE(box.value(), 20);
}

void AnswersTest::aChoiceKeepsItsName() {
  QWidget window;
  auto* column = new QVBoxLayout(&window);
  auto* label = new QLabel(QStringLiteral("&Paper"), &window);
  auto* box = new QComboBox(&window);
  label->setBuddy(box);
  column->addWidget(label);
  column->addWidget(box);
  box->addItems({QStringLiteral("A4"), QStringLiteral("Letter")});
  QAccessibleInterface* one = ask(*box);
  for (const int place : {0, 1, 0}) {
    box->setCurrentIndex(place);
    QCOMPARE(one->text(QAccessible::Name), QStringLiteral("Paper"));
    QCOMPARE(one->text(QAccessible::Value), box->currentText());
    QCOMPARE(test::runFault(*box, box->currentText()), QString());
  }
  box->setAccessibleName(QStringLiteral("Size of the paper"));
  QCOMPARE(one->text(QAccessible::Name), QStringLiteral("Size of the paper"));
  QCOMPARE(one->role(), QAccessible::ComboBox);
}

void AnswersTest::aChoiceOpensItsList() {
  QComboBox box;
  box.addItems({QStringLiteral("A4"), QStringLiteral("Letter")});
  box.show();
  QVERIFY(QTest::qWaitForWindowExposed(&box));
  QAccessibleInterface* one = ask(box);
  QCOMPARE(one->childCount(), 1);
  QCOMPARE(one->indexOfChild(one->child(0)), 0);
  QCOMPARE(one->child(0)->childCount(), 2);
  QCOMPARE(one->child(0)->child(1)->text(QAccessible::Name), QStringLiteral("Letter"));
  QVERIFY(one->state().collapsed);
  one->actionInterface()->doAction(QAccessibleActionInterface::showMenuAction());
  QTRY_VERIFY(one->state().expanded);
  one->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  QTRY_VERIFY(one->state().collapsed);
}

void AnswersTest::aRoleIsGivenWithItsName() {
  QWidget group;
  giveRole(&group, QAccessible::Grouping, QStringLiteral("Reference"));
  QCOMPARE(ask(group)->role(), QAccessible::Grouping);
  QCOMPARE(ask(group)->text(QAccessible::Name), QStringLiteral("Reference"));
  group.setAccessibleName(QStringLiteral("Stock"));
  QCOMPARE(ask(group)->text(QAccessible::Name), QStringLiteral("Stock"));
}

/// A label tells of its text before it can be given a role, and a reader asks at once.
void AnswersTest::aRoleCountsAlsoForWhoAskedBefore() {
  QLabel label(QStringLiteral("80 mg per dose"));
  QCOMPARE(ask(label)->role(), QAccessible::StaticText);
  giveRole(&label, QAccessible::Paragraph, label.text());
  QCOMPARE(ask(label)->role(), QAccessible::Paragraph);
  QCOMPARE(ask(label)->text(QAccessible::Name), QStringLiteral("80 mg per dose"));
}

WARDCHALK_QT_TEST(AnswersTest)

}  // namespace wardchalk::ui::answers_test

#include "answers_test.moc"
