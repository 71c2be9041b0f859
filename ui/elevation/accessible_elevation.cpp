#include "ui/elevation/accessible_elevation.h"

#include "ui/elevation/case_parts.h"
#include "ui/elevation/elevation_view.h"
#include "ui/elevation/scene_rect.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>

#include <algorithm>
#include <map>
#include <tuple>

namespace frontwright {

namespace {

/// A part by what stays the same while the case is edited; ordered, to be found again.
using PartKey = std::tuple<bool, std::int32_t, std::int64_t, std::int64_t>;

PartKey keyOf(const Selection& part) {
    const auto opening = part.lastOpening();
    return {part.member.has_value(),
            part.member ? part.member->number
            : opening   ? opening->number
                        : 0,
            part.mountingHole ? std::int64_t{*part.mountingHole} : -1,
            part.handleHole ? std::int64_t{*part.handleHole} : -1};
}

class AccessibleElevation;
AccessibleElevation* accessibleOf(ElevationView& view);

/// One front, member or hole. Lives as long as the view; not valid while the case has no such part.
class AccessiblePart : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    AccessiblePart(ElevationView& view, Selection part) : m_view(&view), m_part(std::move(part)) {}

    [[nodiscard]] bool isValid() const override {
        return m_view && isThere(m_view->session().plan(), m_part);
    }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override {
        return m_view ? m_view->window()->windowHandle() : nullptr;
    }
    [[nodiscard]] QAccessibleInterface* parent() const override;
    [[nodiscard]] QAccessibleInterface* child(int index) const override;
    [[nodiscard]] int childCount() const override {
        return isValid() ? static_cast<int>(holes().size()) : 0;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        for (int i = 0; i < childCount(); ++i)
            if (this->child(i) == child)
                return i;
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i)->rect().contains(x, y))
                return child(i);
        return nullptr;
    }
    [[nodiscard]] QRect rect() const override {
        if (!isValid())
            return {};
        const QRectF place = inScene(placeOf(m_part, m_view->session().plan()));
        const QRect shown = m_view->mapFromScene(place).boundingRect();
        return {m_view->viewport()->mapToGlobal(shown.topLeft()), shown.size()};
    }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
    [[nodiscard]] QString text(QAccessible::Text which) const override;
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }

    [[nodiscard]] QStringList actionNames() const override {
        return {pressAction(), setFocusAction()};
    }
    void doAction(const QString& name) override {
        if (!isValid() || !actionNames().contains(name))
            return;
        m_view->setFocus(Qt::OtherFocusReason);
        m_view->session().select(m_part);
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    [[nodiscard]] std::vector<Selection> holes() const {
        return holesOf(m_view->session().plan(), m_part);
    }

    QPointer<ElevationView> m_view;
    Selection m_part;
};

/// The view as the list of its parts; the field for typing stands at its end while it is open.
class AccessibleElevation : public QAccessibleWidget {
public:
    explicit AccessibleElevation(ElevationView& view)
        : QAccessibleWidget(&view, QAccessible::List),
          m_view(view) {}
    ~AccessibleElevation() override {
        for (const auto& [key, id] : m_parts)
            QAccessible::deleteAccessibleInterface(id);
    }
    AccessibleElevation(const AccessibleElevation&) = delete;
    AccessibleElevation& operator=(const AccessibleElevation&) = delete;

    [[nodiscard]] int childCount() const override {
        return static_cast<int>(parts().size()) + static_cast<int>(fields().size());
    }
    [[nodiscard]] QAccessibleInterface* child(int index) const override {
        const auto all = parts();
        const auto i = static_cast<std::size_t>(index);
        if (index < 0)
            return nullptr;
        if (i < all.size())
            return part(all[i]);
        const auto open = fields();
        const auto field = index - static_cast<int>(all.size());
        return field < open.size() ? QAccessible::queryAccessibleInterface(open[field]) : nullptr;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        for (int i = 0; i < childCount(); ++i)
            if (this->child(i) == child)
                return i;
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        // The field lies above the parts, members above the fronts that cover them.
        for (int i = childCount() - 1; i >= 0; --i)
            if (child(i)->rect().contains(x, y))
                return child(i);
        return nullptr;
    }
    [[nodiscard]] QAccessibleInterface* focusChild() const override {
        const Selection& selection = m_view.session().selection();
        return m_view.hasFocus() && !selection.isEmpty() ? part(selection) : nullptr;
    }

    [[nodiscard]] QAccessibleInterface* part(Selection selection) const {
        if (selection.openings.size() > 1)
            selection.openings = {selection.openings.back()};
        if (!isThere(m_view.session().plan(), selection))
            return nullptr;
        const auto [at, isNew] = m_parts.try_emplace(keyOf(selection), 0);
        if (isNew)
            at->second =
                QAccessible::registerAccessibleInterface(new AccessiblePart(m_view, selection));
        return QAccessible::accessibleInterface(at->second);
    }

private:
    [[nodiscard]] std::vector<Selection> parts() const {
        return outerParts(m_view.session().plan());
    }
    [[nodiscard]] QList<QWidget*> fields() const {
        QList<QWidget*> open;
        for (QWidget* widget :
             m_view.viewport()->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
            if (widget->isVisible())
                open << widget;
        return open;
    }

    ElevationView& m_view;
    mutable std::map<PartKey, QAccessible::Id> m_parts;
};

AccessibleElevation* accessibleOf(ElevationView& view) {
    return dynamic_cast<AccessibleElevation*>(QAccessible::queryAccessibleInterface(&view));
}

QAccessibleInterface* AccessiblePart::parent() const {
    if (!m_view)
        return nullptr;
    AccessibleElevation* list = accessibleOf(*m_view);
    const bool isHole = m_part.mountingHole || m_part.handleHole;
    return list && isHole ? list->part(Selection::of(m_part.openings.back())) : list;
}

QAccessibleInterface* AccessiblePart::child(int index) const {
    if (index < 0 || index >= childCount())
        return nullptr;
    AccessibleElevation* list = accessibleOf(*m_view);
    return list ? list->part(holes()[static_cast<std::size_t>(index)]) : nullptr;
}

QString AccessiblePart::text(QAccessible::Text which) const {
    if (!isValid())
        return {};
    const Session& session = m_view->session();
    switch (which) {
    case QAccessible::Name:
        return nameOf(m_part, session.project(), session.plan());
    case QAccessible::Value:
        return sizeOf(m_part, session.plan(), session.style());
    case QAccessible::Description:
        return heedOf(m_part, session.work(), session.style());
    default:
        return {};
    }
}

QAccessible::State AccessiblePart::state() const {
    QAccessible::State state;
    if (!isValid()) {
        state.invalid = true;
        return state;
    }
    const Selection& selection = m_view->session().selection();
    const bool isHole = m_part.mountingHole || m_part.handleHole;
    const bool isPicked =
        m_part.member ? selection.member == m_part.member
                      : !selection.openings.empty() && selection.contains(m_part.openings.back());
    const bool sameHole =
        selection.mountingHole == m_part.mountingHole && selection.handleHole == m_part.handleHole;
    state.selectable = true;
    state.multiSelectable = !m_part.member && !isHole;
    state.focusable = true;
    state.selected = isPicked && (!isHole || sameHole);
    const bool isLast = m_part.member || selection.lastOpening() == m_part.lastOpening();
    state.focused = isPicked && sameHole && isLast && m_view->hasFocus();
    state.offscreen = !QRect(m_view->viewport()->mapToGlobal(QPoint()), m_view->viewport()->size())
                           .intersects(rect());
    return state;
}

QAccessibleInterface* makeAccessible(const QString& className, QObject* object) {
    if (className != QLatin1String("frontwright::ElevationView"))
        return nullptr;
    auto* view = qobject_cast<ElevationView*>(object);
    return view ? new AccessibleElevation(*view) : nullptr;
}

} // namespace

void makeElevationAccessible() {
    // Installing the same factory again does nothing.
    QAccessible::installFactory(makeAccessible);
}

QAccessibleInterface* accessiblePart(ElevationView& view, const Selection& part) {
    AccessibleElevation* list = accessibleOf(view);
    return list ? list->part(part) : nullptr;
}

} // namespace frontwright
