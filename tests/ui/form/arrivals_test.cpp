#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QInputMethodEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QTest>

#include "core/entry/read_entry.h"
#include "core/medicine/paths.h"
#include "tests/entries/frozen_rows.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/field_edit.h"
#include "ui/form/form.h"

namespace wardchalk::ui::arrivals_test {

using wardchalk::test::ArrivingRow;
using wardchalk::test::Beside;
using wardchalk::test::frozenArrivalsAtALine;
using wardchalk::test::pathOf;

namespace {

QString words(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// Qt takes a mark before the first letter for one of the encoding, and leaves it out.
QString wholeText(const std::string& text) {
  const QString read = QString::fromStdString(text);
  return text.starts_with("\uFEFF") && !read.startsWith(QChar(0xFEFF)) ? QChar(0xFEFF) + read : read;
}

const char* nameOf(FieldState state) {
  constexpr std::array names = {"empty", "pending", "refused", "read"};
  return names[static_cast<std::size_t>(state)];
}

}  // namespace

/// The frozen rows of how a text arrives, each driven through the form as it says.
class ArrivalsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();
  void aTextMeansTheSameHoweverItArrives_data();
  void aTextMeansTheSameHoweverItArrives();

 private:
  void arrive(const ArrivingRow& row);
  void play(const QString& text);
  void act(const QString& mark);
  void actOnText(const QString& verb, const QString& text);
  void comeBack();
  void hold(const QString& text);
  void set(const QString& text);
  void compose(const QString& preedit, const QString& commit);
  void paste(const QString& text);
  void drop(const QString& text);
  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
  [[nodiscard]] QLineEdit* line() const {
    return form_->findChild<QLineEdit*>(words(path_) + QStringLiteral(":text"));
  }
  [[nodiscard]] FieldState state() const { return editor_->draft().state(path_); }

  std::unique_ptr<CaseEditor> editor_;
  std::unique_ptr<Form> form_;
  std::unique_ptr<QWidget> otherWindow_;
  std::string_view path_;
  QString composed_;
  bool stays_ = false;  // the keyboard is elsewhere, and nothing brings it here
};

void ArrivalsTest::init() {
  editor_ = std::make_unique<CaseEditor>();
  form_ = std::make_unique<Form>(*editor_, exactRules());
  form_->resize(520, 760);
  form_->setUnfolded(true);
  form_->show();
  QVERIFY(QTest::qWaitForWindowActive(form_.get()));
  composed_.clear();
  stays_ = false;
  QApplication::setKeyboardInputInterval(0);  // after every key all that a pause could end has ended
}

void ArrivalsTest::cleanup() {
  otherWindow_.reset();
  form_.reset();
  editor_.reset();
  QLocale::setDefault(QLocale::c());
}

void ArrivalsTest::key(Qt::Key key, Qt::KeyboardModifiers with) {
  QWidget* popup = QApplication::activePopupWidget();
  QTest::keyClick(popup ? popup : QApplication::focusWidget(), key, with);
}

/// Whoever goes on writing after Enter or Tab comes back to the line first.
void ArrivalsTest::comeBack() {
  if (!stays_ && QApplication::focusWidget() != line() && !QApplication::activePopupWidget())
    form_->focusField(words(path_));
}

void ArrivalsTest::set(const QString& text) {
  QAccessibleInterface* one = QAccessible::queryAccessibleInterface(line());
  one->editableTextInterface()->replaceText(0, one->textInterface()->characterCount(), text);
}

void ArrivalsTest::hold(const QString& text) {
  form_->focusField(words(path_));
  QTest::keyClicks(line(), text);
  key(Qt::Key_Return);
  QCOMPARE(nameOf(state()), "read");
}

void ArrivalsTest::compose(const QString& preedit, const QString& commit) {
  composed_ = preedit;
  QInputMethodEvent event(preedit, {});
  event.setCommitString(commit);
  QApplication::sendEvent(line(), &event);
}

void ArrivalsTest::paste(const QString& text) {
  QGuiApplication::clipboard()->setText(text);
  key(Qt::Key_V, Qt::ControlModifier);
}

/// At the end of what the line holds.
void ArrivalsTest::drop(const QString& text) {
  QMimeData data;
  data.setText(text);
  const QPointF end(line()->width() - 30, line()->height() / 2.0);
  QDropEvent event(end, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  static_cast<QObject*>(line())->event(&event);
}

void ArrivalsTest::actOnText(const QString& verb, const QString& text) {
  if (verb == u"wait")
    QCoreApplication::processEvents();
  else if (verb == u"line")
    hold(text.mid(text.indexOf(u' ') + 1));  // "line holds 80 mg"
  else if (verb == u"set")
    set(text);
  else if (verb == u"preedit")
    compose(text == u"cancelled" ? QString() : text, {});
  else if (verb == u"commit")
    compose({}, text);
  else if (verb == u"paste")
    paste(text);
  else
    QFAIL(qPrintable(QStringLiteral("no such mark: %1 %2").arg(verb, text)));
}

void ArrivalsTest::act(const QString& mark) {
  const auto leave = [this](Qt::Key with) {
    // an input method commits what it composes when its line is left
    if (!composed_.isEmpty()) compose({}, std::exchange(composed_, {}));
    key(with);
  };
  if (mark == u"Enter") return leave(Qt::Key_Return);
  if (mark == u"Tab") return leave(Qt::Key_Tab);
  if (mark == u"Escape") return key(Qt::Key_Escape);
  if (mark == u"dropped at the end") return;
  if (mark == u"window back") {
    otherWindow_.reset();
    form_->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(form_.get()));
    return;
  }
  comeBack();
  if (mark == u"blank") return key(Qt::Key_Space);
  if (mark == u"Backspace") return key(Qt::Key_Backspace);
  if (mark == u"Delete") return key(Qt::Key_Delete);
  if (mark == u"Home") return key(Qt::Key_Home);
  if (mark == u"End") return key(Qt::Key_End);
  if (mark == u"select all") return key(Qt::Key_A, Qt::ControlModifier);
  if (mark == u"undo") return key(Qt::Key_Z, Qt::ControlModifier);
  if (mark == u"menu open") {
    key(Qt::Key_Down, Qt::AltModifier);
    QVERIFY(QApplication::activePopupWidget());
    return;
  }
  if (mark == u"window switch") {
    otherWindow_ = std::make_unique<QWidget>();
    otherWindow_->show();
    otherWindow_->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(otherWindow_.get()));
    return;
  }
  actOnText(mark.section(u' ', 0, 0), mark.section(u' ', 1));
}

void ArrivalsTest::play(const QString& text) {
  for (qsizetype at = 0; at < text.size();) {
    if (text[at] == u'{') {
      const qsizetype end = text.indexOf(u'}', at);
      act(text.mid(at + 1, end - at - 1));
      at = end + 1;
    } else {
      comeBack();
      QTest::keyClick(QApplication::focusWidget(), text[at].toLatin1());
      ++at;
    }
  }
}

void ArrivalsTest::arrive(const ArrivingRow& row) {
  const QString way = words(row.way);
  const QString text = wholeText(row.text);
  if (way.startsWith(u"keys in locale ")) QLocale::setDefault(QLocale(way.section(u' ', -1)));
  if (way == u"paste" || way == u"dictated") {
    form_->focusField(words(path_));
    paste(text);
    key(Qt::Key_Return);
  } else if (way.startsWith(u"drop")) {
    const qsizetype held = text.indexOf(u'}') + 1;
    if (way.contains(u"filled")) play(text.left(held));
    form_->focusField(words(path::medicine));
    drop(way.contains(u"filled") ? text.mid(held).section(u'{', 0, 0) : text);
  } else if (way.endsWith(u"no focus")) {
    const qsizetype held = text.startsWith(u"{line") ? text.indexOf(u'}') + 1 : 0;
    play(text.left(held));
    form_->focusField(words(path::medicine));
    stays_ = true;
    play(text.mid(held));
  } else {
    form_->focusField(words(path_));
    play(text);
  }
}

void ArrivalsTest::aTextMeansTheSameHoweverItArrives_data() {
  QTest::addColumn<int>("index");
  int index = 0;
  for (const ArrivingRow& row : frozenArrivalsAtALine())
    QTest::newRow((row.way + " " + row.meant.name()).c_str()) << index++;
  QVERIFY(index > 120);
}

void ArrivalsTest::aTextMeansTheSameHoweverItArrives() {
  QFETCH(int, index);
  static const std::vector<ArrivingRow> rows = frozenArrivalsAtALine();
  const ArrivingRow& row = rows[static_cast<std::size_t>(index)];
  path_ = pathOf(row.meant.field);
  arrive(row);
  const CaseDraft& draft = editor_->draft();
  QCOMPARE(nameOf(state()), row.result.c_str());
  QCOMPARE(form_->field(words(path_))->entry(), wholeText(draft.line(path_)));
  if (row.result == "read") {
    QCOMPARE(draft.text(path_), row.meant.means);
    for (const Beside& one : row.meant.beside)
      if (one.name != "remark") QCOMPARE(draft.text(pathOf(one.name)), one.value);
  } else if (row.result == "refused") {
    const std::string offered = draft.refusal(path_)->suggestion;
    QVERIFY(draft.answers(path_).size() == (row.meant.isQuestion ? 2 : 0));
    if (offered.empty()) return;
    QCOMPARE(readEntry(path_, offered, {})->safe, row.meant.means);
  }
}

WARDCHALK_QT_TEST(ArrivalsTest)

}  // namespace wardchalk::ui::arrivals_test

#include "arrivals_test.moc"
