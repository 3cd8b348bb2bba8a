#include "tests/ui/practice/pupil.h"

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTest>

#include "tests/support/practice_answers.h"
#include "ui/practice/line_row.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

namespace {

constexpr std::uint64_t firstSeed = 41;
constexpr int mostTabs = 300;

}  // namespace

Pupil::Pupil(int zoom) : window_(std::make_unique<PracticeWindow>(files_, PaperSize::a4, firstSeed, zoom)) {
  window_->resize(1366, 768);
  window_->show();
  if (!QTest::qWaitForWindowActive(window_.get())) qFatal("the window does not become active");
}

void Pupil::type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }

void Pupil::press(Qt::Key key, Qt::KeyboardModifiers with) {
  QWidget* at = QApplication::focusWidget() ? QApplication::focusWidget() : window_.get();
  QTest::keyClick(at, key, with);
}

QString Pupil::focused() const {
  const QWidget* at = QApplication::focusWidget();
  return at ? at->objectName() : QString();
}

bool Pupil::walkTo(const QString& name) {
  for (int steps = 0; steps < mostTabs && focused() != name; ++steps) press(Qt::Key_Tab);
  return focused() == name;
}

bool Pupil::push(const QString& name) {
  if (!walkTo(name)) return false;
  press(Qt::Key_Space);
  return true;
}

bool Pupil::choose(const QStringList& topics) {
  for (const QString& topic : topics)
    if (!push(QStringLiteral("topic:") + topic)) return false;
  return true;
}

bool Pupil::begin(const QStringList& topics, int count, int seed, bool test) {
  if (!choose(topics) || !walkTo(QStringLiteral("count"))) return false;
  press(Qt::Key_A, Qt::ControlModifier);
  type(QString::number(count));
  if (!walkTo(QStringLiteral("seed"))) return false;
  press(Qt::Key_A, Qt::ControlModifier);
  type(QString::number(seed));
  if (test) {
    if (!walkTo(QStringLiteral("mode:learning"))) return false;
    press(Qt::Key_Down);
    press(Qt::Key_Space);
  }
  return push(QStringLiteral("begin"));
}

LineRow* Pupil::row(std::size_t line) {
  return window_->findChild<LineRow*>(QStringLiteral("line-%1:row").arg(line + 1));
}

void Pupil::write(std::size_t line, const QString& text) {
  const Ask& ask = session().current().problem.asks[line];
  if (ask.isVerdict()) {
    row(line)->field()->setFocus(Qt::TabFocusReason);
    return type(text.left(1));
  }
  auto* edit = qobject_cast<QLineEdit*>(row(line)->field());
  edit->setFocus(Qt::TabFocusReason);
  press(Qt::Key_A, Qt::ControlModifier);
  QTest::keyClick(edit, Qt::Key_Delete);
  edit->insert(text);  // signs beyond ASCII are on no key of the test's keyboard
}

QString Pupil::right(std::size_t line) const {
  return QString::fromStdString(test::rightAnswer(session().current().problem, line));
}

QString Pupil::wrong(std::size_t line) const {
  return QString::fromStdString(test::wrongAnswer(session().current().problem, line));
}

QString Pupil::said(std::size_t line) {
  return window_->findChild<QLabel*>(QStringLiteral("line-%1:said").arg(line + 1))->text();
}

QString Pupil::rungs(std::size_t line) {
  QStringList all;
  const auto* holder = window_->findChild<QWidget*>(QStringLiteral("line-%1:rungs").arg(line + 1));
  for (const QWidget* told : holder->findChildren<QWidget*>(QRegularExpression(QStringLiteral(":rung-")))) {
    const auto* label = qobject_cast<const QLabel*>(told);
    const auto* picture = qobject_cast<const SpokenWidget*>(told);
    all << (label ? label->text() : picture->spoken());
  }
  return all.join(u'\n');
}

bool Pupil::isOn(const char* page) const {
  const auto* shown = window_->findChild<QWidget*>(QLatin1String(page));
  return shown && shown->isVisible();
}

}  // namespace wardchalk::ui
