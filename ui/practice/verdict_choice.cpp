#include "ui/practice/verdict_choice.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QRadioButton>
#include <array>

#include "core/practice/marking/hints.h"
#include "ui/access/answers.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// As they stand in files of answers, whatever the language of the screen.
constexpr std::array<const char*, 4> answers = {"safe", "ask", "unsafe", "does not fit"};

}  // namespace

VerdictChoice::VerdictChoice(QWidget* parent) : QWidget(parent), group_(new QButtonGroup(this)) {
  giveRole(this, QAccessible::Grouping);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(20);
  group_->setExclusive(true);
  for (std::size_t i = 0; i < answers.size(); ++i) {
    auto* choice = new QRadioButton(fromCore(verdictWord(static_cast<VerdictWord>(i))), this);
    choice->setObjectName(QStringLiteral("verdict-%1").arg(i));
    choice->setMinimumHeight(practiceTarget);
    choice->installEventFilter(this);
    group_->addButton(choice, static_cast<int>(i));
    row->addWidget(choice);
  }
  row->addStretch(1);
  setFocusProxy(group_->button(0));
  connect(group_, &QButtonGroup::idClicked, this, &VerdictChoice::chosen);
}

QString VerdictChoice::text() const {
  const int id = group_->checkedId();
  return id < 0 ? QString() : QLatin1String(answers[static_cast<std::size_t>(id)]);
}

void VerdictChoice::setText(const QString& text) {
  const std::optional<VerdictWord> word = readVerdictWord(text.toStdString());
  group_->setExclusive(false);  // so that none can be chosen again
  for (QAbstractButton* button : group_->buttons())
    button->setChecked(word && static_cast<VerdictWord>(group_->id(button)) == *word);
  group_->setExclusive(true);
}

void VerdictChoice::setReadOnly(bool readOnly) {
  for (QAbstractButton* button : group_->buttons()) button->setEnabled(!readOnly || button->isChecked());
}

bool VerdictChoice::isTooEarly(const QKeyEvent& key) const { return key.key() == Qt::Key_Space && !meant_; }

bool VerdictChoice::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) {
    const Qt::FocusReason reason = static_cast<QFocusEvent*>(event)->reason();
    if (reason != Qt::ActiveWindowFocusReason && reason != Qt::PopupFocusReason)
      meant_ = reason != Qt::OtherFocusReason;
  }
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  if (isTooEarly(*key)) return true;
  if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
    Q_EMIT entered();
    return true;
  }
  if (key->modifiers() == Qt::NoModifier && !key->text().trimmed().isEmpty())
    for (QAbstractButton* button : group_->buttons())
      if (button->isEnabled() && button->text().startsWith(key->text(), Qt::CaseInsensitive)) {
        button->setFocus(Qt::ShortcutFocusReason);
        button->click();
        return true;
      }
  return QWidget::eventFilter(watched, event);
}

}  // namespace wardchalk::ui
