#pragma once

#include "core/edits/own_entries.h"
#include "core/lengths/format.h"
#include "core/lengths/parse.h"
#include "ui/language/data_names.h"
#include "ui/language/told.h"
#include "ui/session/session.h"
#include "ui/window/choice_delegate.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>
#include <memory>

namespace frontwright {

/// One column of a table of catalogue entries: its text, and the entry with what was typed.
template<class Entry>
struct EntryColumn {
    QString title;
    std::function<std::string(const Entry&, Unit)> get;
    /// None where the column only shows. Error: what was typed can't be read.
    std::function<std::optional<Error>(Entry&, const std::string&, Unit)> set;
    QStringList choices = {}; ///< where its text is one of few
};

template<class Entry>
EntryColumn<Entry> textColumn(const QString& title, std::string Entry::*part) {
    return {title, [part](const Entry& entry, Unit) { return entry.*part; },
            [part](Entry& entry, const std::string& typed, Unit) -> std::optional<Error> {
                entry.*part = typed;
                return std::nullopt;
            }};
}

/// `at` gives the length that the column is about, of an entry that may change.
template<class Entry>
EntryColumn<Entry> lengthColumn(const QString& title, std::function<Length&(Entry&)> at) {
    return {title,
            [at](const Entry& entry, Unit unit) {
                Entry copy = entry;
                return exact(at(copy), unit);
            },
            [at](Entry& entry, const std::string& typed, Unit unit) -> std::optional<Error> {
                const auto length = parseLength(typed, unit);
                if (!length.ok())
                    return length.error();
                at(entry) = length.value().length.length;
                return std::nullopt;
            }};
}

/// "1 in; 1 1/4 in"
template<class Entry>
EntryColumn<Entry> lengthsColumn(const QString& title, std::vector<Length> Entry::*part) {
    return {title,
            [part](const Entry& entry, Unit unit) {
                std::string text;
                for (const Length length : entry.*part)
                    text += (text.empty() ? "" : "; ") + exact(length, unit);
                return text;
            },
            [part](Entry& entry, const std::string& typed, Unit unit) -> std::optional<Error> {
                std::vector<Length> lengths;
                for (const QString& one :
                     QString::fromStdString(typed).split(u';', Qt::SkipEmptyParts)) {
                    const auto length = parseLength(one.trimmed().toStdString(), unit);
                    if (!length.ok())
                        return length.error();
                    lengths.push_back(length.value().length.length);
                }
                entry.*part = std::move(lengths);
                return std::nullopt;
            }};
}

/// A table of one kind of entry: the program's and the case's own, which carry a mark. Typing in a
/// cell makes the entry an own one.
template<class Entry>
class EntryTable {
    Q_DECLARE_TR_FUNCTIONS(frontwright::EntryTable)
public:
    EntryTable(Session& session, std::vector<Entry> Catalogue::*list, EntryKind kind,
               std::vector<EntryColumn<Entry>> columns, QLabel& message)
        : m_session(session),
          m_list(list),
          m_kind(kind),
          m_columns(std::move(columns)),
          m_message(message) {}

    /// The page; it owns what it needs of this, so `table` is kept by it.
    static QWidget* page(const std::shared_ptr<EntryTable>& table, const QString& name) {
        auto* page = new QWidget;
        table->build(*page, name, table);
        return page;
    }

private:
    void build(QWidget& page, const QString& name, const std::shared_ptr<EntryTable>& self) {
        m_table = new QTableWidget(0, static_cast<int>(m_columns.size()));
        m_table->setAccessibleName(name);
        m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
        m_table->setSelectionMode(QAbstractItemView::SingleSelection);
        m_table->setTabKeyNavigation(false);
        m_table->setCornerButtonEnabled(false);
        QStringList titles;
        for (const auto& column : m_columns)
            titles << column.title;
        m_table->setHorizontalHeaderLabels(titles);
        m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
        for (int i = 0; i < m_table->columnCount(); ++i)
            if (const auto& choices = m_columns[static_cast<std::size_t>(i)].choices;
                !choices.isEmpty())
                m_table->setItemDelegateForColumn(i, new ChoiceDelegate(choices, &page));
        m_remove = new QPushButton(tr("&Remove own entry"));
        auto* add = new QPushButton(tr("&Add a copy"));
        auto* buttons = new QHBoxLayout;
        buttons->addWidget(add);
        buttons->addWidget(m_remove);
        buttons->addStretch();
        auto* column = new QVBoxLayout(&page);
        column->addWidget(m_table, 1);
        column->addLayout(buttons);
        QObject::connect(m_table, &QTableWidget::cellChanged, &page,
                         [self](int row, int index) { self->change(row, index); });
        QObject::connect(m_table, &QTableWidget::itemSelectionChanged, &page,
                         [self] { self->enable(); });
        QObject::connect(add, &QPushButton::clicked, &page, [self] { self->addCopy(); });
        QObject::connect(m_remove, &QPushButton::clicked, &page, [self] { self->remove(); });
        QObject::connect(&m_session, &Session::workChanged, &page, [self] { self->fill(); });
        fill();
    }

    [[nodiscard]] const std::vector<Entry>& entries() const {
        return (*m_session.work().catalogue).*m_list;
    }
    [[nodiscard]] bool isOwn(const std::string& id) const {
        const auto& own = m_session.project().own.*m_list;
        return std::any_of(own.begin(), own.end(), [&](const Entry& e) { return e.id == id; });
    }
    [[nodiscard]] const Entry* selected() const {
        const int row = m_table->currentRow();
        return row < 0 || static_cast<std::size_t>(row) >= entries().size()
                   ? nullptr
                   : &entries()[static_cast<std::size_t>(row)];
    }

    void fill() {
        const QSignalBlocker quiet(m_table);
        const Unit unit = m_session.style().unit;
        const int current = m_table->currentRow();
        m_table->setRowCount(static_cast<int>(entries().size()));
        QStringList marks;
        for (int row = 0; row < m_table->rowCount(); ++row) {
            const Entry& entry = entries()[static_cast<std::size_t>(row)];
            marks << (isOwn(entry.id) ? tr("own") : QString());
            for (int i = 0; i < m_table->columnCount(); ++i) {
                const auto& column = m_columns[static_cast<std::size_t>(i)];
                auto* item = new QTableWidgetItem(toldName(column.get(entry, unit)));
                if (!column.set)
                    item->setFlags(item->flags() & ~Qt::ItemIsEditable);
                m_table->setItem(row, i, item);
            }
        }
        m_table->setVerticalHeaderLabels(marks);
        m_table->setCurrentCell(std::clamp(current, 0, std::max(0, m_table->rowCount() - 1)), 0);
        enable();
    }

    void enable() {
        const Entry* entry = selected();
        m_remove->setEnabled(entry && isOwn(entry->id));
    }

    void change(int row, int index) {
        Entry entry = entries()[static_cast<std::size_t>(row)];
        const auto& column = m_columns[static_cast<std::size_t>(index)];
        const std::string typed = m_table->item(row, index)->text().trimmed().toStdString();
        if (const auto error = column.set(entry, typed, m_session.style().unit)) {
            m_message.setText(told(error->sentence()));
            return fill();
        }
        markOwn(entry);
        make(tr("Change a catalogue entry"), keepOwn(m_session.project(), entry));
    }

    void addCopy() {
        const Entry* from = selected();
        if (!from)
            return;
        Entry entry = *from;
        const std::string base = entry.id.starts_with("own-") ? entry.id : "own-" + entry.id;
        for (int n = 1; n == 1 || isTaken(entry.id); ++n)
            entry.id = base + "-" + std::to_string(n);
        entry.name = tr("%1 (own)").arg(toldName(entry.name)).toStdString();
        markOwn(entry);
        make(tr("Add a catalogue entry"), keepOwn(m_session.project(), entry));
        m_table->setCurrentCell(m_table->rowCount() - 1, 0);
    }
    [[nodiscard]] bool isTaken(const std::string& id) const {
        return std::any_of(entries().begin(), entries().end(),
                           [&](const Entry& other) { return other.id == id; });
    }

    void remove() {
        if (const Entry* entry = selected())
            make(tr("Remove a catalogue entry"),
                 removeOwn(m_session.project(), m_kind, std::string(entry->id)));
    }

    static void markOwn(Entry& entry) {
        if constexpr (requires { entry.source; })
            entry.source = {SourceKind::Maker, "the maker's own entry"};
    }

    /// What the session refuses is told by the dialog, which listens to it.
    void make(const QString& name, const Result<Project>& edited) {
        m_message.clear();
        m_session.apply(name, edited);
        fill();
    }

    Session& m_session;
    std::vector<Entry> Catalogue::*m_list;
    EntryKind m_kind;
    std::vector<EntryColumn<Entry>> m_columns;
    QLabel& m_message;
    QTableWidget* m_table = nullptr;
    QPushButton* m_remove = nullptr;
};

} // namespace frontwright
