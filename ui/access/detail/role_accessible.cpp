#include "ui/access/detail/role_accessible.h"

#include <QVariant>

namespace wardchalk::ui::detail {

namespace {

constexpr char roleKey[] = "accessibleRole";

}  // namespace

void keepRole(QWidget& widget, QAccessible::Role role) {
  widget.setProperty(roleKey, static_cast<int>(role));
}

std::optional<QAccessible::Role> roleOf(const QWidget& widget) {
  const QVariant role = widget.property(roleKey);
  if (!role.isValid()) return std::nullopt;
  return static_cast<QAccessible::Role>(role.toInt());
}

RoleAccessible::RoleAccessible(QWidget* widget)
    : QAccessibleWidget(widget, roleOf(*widget).value_or(QAccessible::Client)) {}

}  // namespace wardchalk::ui::detail
