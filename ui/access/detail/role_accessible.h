#pragma once

#include <QAccessibleWidget>
#include <optional>

namespace wardchalk::ui::detail {

void keepRole(QWidget& widget, QAccessible::Role role);
/// The role that the widget was given; none for most.
[[nodiscard]] std::optional<QAccessible::Role> roleOf(const QWidget& widget);

/// A widget with the role that it was given. Its name is not handed to Qt's constructor, where it would stay
/// as it was for ever.
class RoleAccessible : public QAccessibleWidget {
 public:
  explicit RoleAccessible(QWidget* widget);
};

}  // namespace wardchalk::ui::detail
