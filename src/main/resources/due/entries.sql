-- What can be due, with the facts from which its day follows; one row a thing and kind. The same in H2 and PostgreSQL.
select 'TEST' as kind, c.id as object_id, c.id as page_id, c.tag as name, s.id as site_id, s.name as site, s.zone as zone,
       cast(null as date) as last_on, m.last_at as last_at, cast(null as date) as stated,
       i.months as months, i.id as interval_id
from compressor c
join site s on s.id = c.site_id
left join machine_state m on m.compressor_id = c.id
left join due_interval i on i.site_id = s.id and i.kind = 'TEST'
where c.in_service = true
union all
select 'CALIBRATION', n.id, n.id, n.tag, s.id, s.name, s.zone,
       k.done_on, null, k.due_on, n.interval_months, n.id
from instrument n
left join site s on s.id = n.site_id
left join calibration k on k.instrument_id = n.id
    and not exists (select 1 from calibration l where l.supersedes_id = k.id)
    and not exists (select 1 from calibration l where l.instrument_id = k.instrument_id
        and (l.done_on > k.done_on or l.done_on = k.done_on and l.id > k.id)
        and not exists (select 1 from calibration z where z.supersedes_id = l.id))
where n.in_service = true and (k.id is not null or n.interval_months is not null)
union all
select 'VALVE_TEST', v.id, r.id, concat(r.tag, ', ', v.tag), s.id, s.name, s.zone,
       coalesce((select max(t.done_on) from valve_test t where t.valve_id = v.id and t.passed = true
           and t.withdrawn = false
           and not exists (select 1 from valve_test l where l.supersedes_id = t.id)), v.installed_on),
       null, null, i.months, i.id
from relief_valve v
join receiver r on r.id = v.receiver_id
join site s on s.id = r.site_id
left join due_interval i on i.site_id = s.id and i.kind = 'VALVE_TEST'
where v.in_service = true and r.in_service = true
union all
select 'CERTIFICATE', r.id, r.id, r.tag, s.id, s.name, s.zone,
       k.issued_on, null, coalesce(k.valid_to, r.certificate_due), null, null
from receiver r
join site s on s.id = r.site_id
left join (select receiver_id, max(issued_on) as issued_on, max(valid_to) as valid_to,
               sum(case when in_force = true then 1 else 0 end) as in_force,
               sum(case when in_force = true and valid_to is null then 1 else 0 end) as endless
           from (select receiver_id, in_force,
                     case when in_force = true then issued_on end as issued_on,
                     case when in_force = true then valid_to end as valid_to
                 from vessel_certificate) paper
           group by receiver_id) k on k.receiver_id = r.id
where r.in_service = true and coalesce(r.certificate_required, true) = true
  and (k.in_force > 0 and k.endless = 0
       or k.receiver_id is null and (r.certificate_due is not null or r.certificate_required = true)
       or k.in_force = 0 and r.certificate_required = true)
union all
select w.kind, r.id, r.id, r.tag, s.id, s.name, s.zone,
       n.done_on, null, n.next_due, i.months, i.id
from receiver r
join site s on s.id = r.site_id
cross join (values ('EXTERNAL'), ('INTERNAL'), ('THICKNESS'), ('HYDROSTATIC')) as w (kind)
left join due_interval i on i.site_id = s.id and i.kind = w.kind
left join vessel_inspection n on n.receiver_id = r.id and n.kind = w.kind and n.withdrawn = false
    and not exists (select 1 from vessel_inspection l where l.supersedes_id = n.id)
    and not exists (select 1 from vessel_inspection l where l.receiver_id = n.receiver_id and l.kind = n.kind
        and l.withdrawn = false and (l.done_on > n.done_on or l.done_on = n.done_on and l.id > n.id)
        and not exists (select 1 from vessel_inspection z where z.supersedes_id = l.id))
where r.in_service = true and (i.months is not null or n.id is not null)
